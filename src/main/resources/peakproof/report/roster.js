'use strict';
(() => {
  const form = document.querySelector('form.filter');
  const table = document.querySelector('table.squad');
  const body = table.tBodies[0];
  const rows = [...body.rows];
  form.hidden = false;
  const by = (row, column) => {
    const cell = row.cells[column];
    const value = cell.dataset.by === undefined ? cell.textContent.trim().toLowerCase() : cell.dataset.by;
    return value !== '' && !isNaN(value) ? Number(value) : value;
  };
  const compare = (one, other) => {
    if (typeof one === typeof other) {
      return one < other ? -1 : one > other ? 1 : 0;
    }
    return typeof one === 'number' ? -1 : 1;
  };
  const heads = [...table.tHead.rows[0].cells];
  heads.forEach((head, column) => {
    const button = document.createElement('button');
    button.type = 'button';
    button.append(...head.childNodes);
    head.append(button);
    button.addEventListener('click', () => {
      const now = head.getAttribute('aria-sort');
      const down = now === null ? head.dataset.down !== undefined : now === 'ascending';
      heads.forEach(other => other.removeAttribute('aria-sort'));
      head.setAttribute('aria-sort', down ? 'descending' : 'ascending');
      // The order of the file is who needs the coach first; a stable sort keeps it among equals.
      const sorted = rows.map(row => [by(row, column), row]).sort((one, other) => (down ? -1 : 1) * compare(one[0], other[0]));
      body.append(...sorted.map(pair => pair[1]));
    });
  });
  const filter = () => {
    const severities = [...form.querySelectorAll('[name=severity]:checked')].map(box => box.value);
    const name = form.elements.name.value.trim().toLowerCase();
    const shared = form.elements.shared ? form.elements.shared.value : '';
    const changed = form.elements.changed ? form.elements.changed.checked : false;
    let left = 0;
    rows.forEach(row => {
      const shows = severities.includes(row.dataset.severity)
        && row.cells[1].textContent.toLowerCase().includes(name)
        && (shared === '' || row.dataset.in.split(' ').includes(shared))
        && (!changed || row.querySelector('details'));
      row.hidden = !shows;
      left += shows ? 1 : 0;
    });
    form.querySelector('output').textContent = left === rows.length ? '' : left + ' of ' + rows.length;
  };
  form.addEventListener('input', filter);
  form.addEventListener('submit', event => event.preventDefault());
  filter();
})();
