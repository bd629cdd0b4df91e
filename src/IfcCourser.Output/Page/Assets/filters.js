// Rows of a table by words and choices.
const byId = id => document.getElementById(id);
const valueOf = (row, name) => row.dataset[name] ?? row.querySelector(`.${name}`)?.textContent;

class Filter {
  constructor(form) {
    this.form = form;
    this.rows = [...byId(form.dataset.table).tBodies[0].rows];
    this.output = form.querySelector('output');
    form.addEventListener('input', () => this.apply());
    form.addEventListener('submit', event => event.preventDefault());
    form.addEventListener('reset', () => setTimeout(() => this.apply()));
    this.apply();
  }

  apply() {
    const { search, ...choices } = Object.fromEntries(new FormData(this.form));
    const words = search.toLowerCase().split(/\s+/).filter(Boolean);
    let shown = 0;
    for (const row of this.rows) {
      const text = words.length ? (row.text ??= row.textContent.toLowerCase()) : '';
      row.hidden = !(words.every(word => text.includes(word)) && Object.entries(choices).every(([name, value]) => !value || valueOf(row, name) === value));
      shown += !row.hidden;
    }
    this.output.textContent = WORDS.shown(shown, this.rows.length);
  }

  choose(name, value) {
    this.form.reset();
    this.form.elements[name].value = value;
    this.apply();
  }

  /** Lets a row be seen that the filter hides. */
  reveal(row) {
    if (row.hidden) {
      this.form.reset();
      this.apply();
    }
  }
}
