// Puts the page to work.
const data = JSON.parse(byId('data').textContent);
document.documentElement.classList.add('live');
useInches(data.inch);
const filters = new Map([...document.querySelectorAll('form.filter')].map(form => [form.dataset.table, new Filter(form)]));
const viewer = data.walls.length ? new Viewer(data.walls) : undefined;

/** Follows the address: to a wall's elevation, or to a row that a filter may hide. */
function follow() {
  const [, number, place] = /^#w(\d+)(?:~(.+))?$/.exec(location.hash) ?? [];
  if (number && viewer?.show(Number(number), place)) {
    byId('viewer').scrollIntoView({ block: 'nearest' });
    return;
  }
  const row = location.hash.length > 1 && byId(location.hash.slice(1));
  if (!row) return;
  filters.get(row.closest('table')?.id)?.reveal(row);
  row.scrollIntoView({ block: 'center' });
}

document.addEventListener('click', event => {
  const link = event.target.closest('a');
  if (link?.dataset.code) {
    filters.get('findings-table').choose('code', link.dataset.code);
  } else if (link?.dataset.at) {
    event.preventDefault();
    location.hash = `${link.getAttribute('href')}~${link.dataset.at}`;
    byId('viewer').focus({ preventScroll: true });
  } else if (link && /^#w\d+$/.test(link.getAttribute('href'))) {
    // The same address again brings no event.
    if (link.getAttribute('href') === location.hash) follow();
    byId('viewer').focus({ preventScroll: true });
  }
});

byId('storey')?.addEventListener('input', event => {
  location.hash = `w${data.walls.find(wall => `p${wall.p}` === event.target.value).n}`;
});
window.addEventListener('hashchange', follow);
window.addEventListener('beforeprint', () => { byId('legend')?.setAttribute('open', ''); });
if (viewer && !/^#w\d/.test(location.hash)) viewer.show(data.walls[0].n);
follow();
performance.mark('ready');
