// One elevation at a time: chosen by the address (#w12, #w12~f34, #w12~D1), drawn when asked for, stepped through with the arrow keys.

class Viewer {
  constructor(walls) {
    this.walls = walls;
    this.index = new Map(walls.map((wall, i) => [wall.n, i]));
    this.host = byId('drawing');
    this.zoom = 1;
    byId('previous').onclick = () => this.go(-1);
    byId('next').onclick = () => this.go(1);
    byId('closer').onclick = () => this.scale(1.5);
    byId('farther').onclick = () => this.scale(1 / 1.5);
    // Not pointerover, which also comes when the keyboard scrolls the drawing under a pointer at rest.
    this.host.addEventListener('pointermove', event => this.point(event));
    this.host.addEventListener('click', event => this.point(event));
    this.host.addEventListener('keydown', event => this.key(event));
    new ResizeObserver(() => this.resized()).observe(this.host);
    legend(byId('legend'));
  }

  /** Shows a wall and, where named, one of its things or findings. */
  show(number, place) {
    if (!this.index.has(number)) return false;
    this.at = this.index.get(number);
    this.place = place;
    const wall = this.wall = this.walls[this.at];
    byId('wall-name').replaceChildren(`W${String(wall.n).padStart(3, '0')} `, bdi(wall.name), ', ', bdi(wall.storey));
    const [length, thick] = wall.size;
    byId('wall-facts').textContent = WORDS.facts(withUnit(length), withUnit(wall.box[3] - wall.box[2]), withUnit(thick));
    byId('previous').disabled = this.at === 0;
    byId('next').disabled = this.at === this.walls.length - 1;
    this.listFindings();
    choosePlan(wall);
    this.draw();
    return true;
  }

  go(step) { location.hash = `w${this.walls[this.at + step].n}`; }

  scale(by) {
    this.zoom = Math.min(12, Math.max(1, this.zoom * by));
    this.draw();
  }

  resized() {
    const width = this.host.clientWidth;
    if (this.wall && width && Math.abs(width - this.width) > 1) this.draw();
  }

  draw() {
    this.width = this.host.clientWidth || 800;
    const [left, right, bottom, top] = this.wall.box;
    // A block is at least so long on the screen that its joints are seen: longer walls scroll. High walls stay in the window.
    const least = (right - left) / Math.max(...this.wall.kinds.map(kind => kind[2])) * 22;
    const most = Math.max((right - left) / (top - bottom) * innerHeight * 0.6, 300);
    const drawn = drawElevation(this.wall, Math.round(Math.max(Math.min(this.width, most), least) * this.zoom));
    this.things = drawn.things;
    this.host.replaceChildren(drawn.svg);
    this.list = byId('pieces');
    byId('readout').textContent = WORDS.hint;
    this.active = undefined;
    this.find();
  }

  find() {
    const flag = this.place && byId(this.place.replace(/^f/, 'flag'));
    const thing = this.place && this.things.findIndex(thing => thing.id === this.place);
    if (flag) flag.classList.add('here');
    if (thing >= 0) this.activate(thing);
    const target = flag || this.things[thing]?.element;
    if (target) this.reveal(target);
    for (const item of byId('wall-findings').children) item.classList.toggle('here', item.dataset.n === this.place);
  }

  /** Scrolls the drawing sideways, not the page. */
  reveal(element) {
    const box = element.getBoundingClientRect(), host = this.host.getBoundingClientRect();
    if (box.left < host.left || box.right > host.right) this.host.scrollLeft += (box.left + box.right - host.left - host.right) / 2;
  }

  activate(i) {
    this.things[this.active]?.element.setAttribute('aria-selected', false);
    this.active = i;
    const { element, label } = this.things[i];
    element.setAttribute('aria-selected', true);
    this.list.setAttribute('aria-activedescendant', element.id);
    byId('readout').textContent = label;
  }

  point(event) {
    const option = event.target.closest('[role=option]');
    if (option && Number(option.id.slice(1)) !== this.active) this.activate(Number(option.id.slice(1)));
  }

  key(event) {
    if (event.target !== this.list) return;
    const last = this.things.length - 1, now = this.active ?? -1;
    const next = { ArrowRight: () => Math.min(last, now + 1), ArrowLeft: () => Math.max(0, now - 1), Home: () => 0, End: () => last,
      ArrowUp: () => this.beyond(now, 1), ArrowDown: () => this.beyond(now, -1) }[event.key];
    if (!next) return;
    event.preventDefault();
    this.activate(next());
    this.reveal(this.things[this.active].element);
  }

  /** The nearest thing above or under the active one. */
  beyond(now, way) {
    if (now < 0) return 0;
    const middle = ({ box: [from, to] }) => (from + to) / 2, height = ({ box: [, , low, high] }) => (low + high) / 2;
    const here = this.things[now];
    let best = now, least = Infinity;
    this.things.forEach((other, i) => {
      const up = (height(other) - height(here)) * way, aside = Math.abs(middle(other) - middle(here));
      if (up > 0 && up + aside * 2 < least) [best, least] = [i, up + aside * 2];
    });
    return best;
  }

  listFindings() {
    const items = this.wall.findings.map(([n]) => {
      const cells = byId(`f${n}`).cells;
      const link = node('a', { href: `#f${n}` }, cells[1].textContent);
      const item = node('li', { value: n, 'data-n': `f${n}` }, node('span', { class: cells[0].className }, cells[0].textContent), ' ', link, ' ', cells[4].textContent);
      item.onpointerenter = () => byId(`flag${n}`)?.classList.add('here');
      item.onpointerleave = () => this.place !== `f${n}` && byId(`flag${n}`)?.classList.remove('here');
      return item;
    });
    byId('wall-findings').replaceChildren(...(items.length ? items : [node('li', { class: 'none' }, WORDS.noFindings)]));
  }
}

function bdi(text) {
  const made = document.createElement('bdi');
  made.textContent = text;
  return made;
}

function legend(host) {
  const list = document.createElement('ul');
  host.append(node('svg', { width: 0, height: 0, 'aria-hidden': 'true' }, hatches(1, 'legend-')));
  for (const [type, words] of WORDS.legend) {
    const line = ['bar', 'joint', 'tick'].includes(type);
    const sample = node('svg', { width: 34, height: 18, viewBox: '0 0 34 18', style: '--u:1px', 'aria-hidden': 'true' },
      node('path', { class: type, d: type === 'joint' ? 'M15 1H19V17H15Z' : line ? 'M17 1V17' : 'M1.5 3H32.5V15H1.5Z' }));
    list.append(node('li', {}, sample, words));
  }
  host.append(list);
}

/** Shows the wall's storey, and the wall on its plan. */
function choosePlan(wall) {
  for (const figure of document.querySelectorAll('.plan')) figure.classList.toggle('away', figure.id !== `p${wall.p}`);
  const storey = byId('storey');
  if (storey) storey.value = `p${wall.p}`;
  document.querySelector('.plan a[aria-current]')?.removeAttribute('aria-current');
  document.querySelector(`.plan a[href="#w${wall.n}"]`)?.setAttribute('aria-current', 'true');
}
