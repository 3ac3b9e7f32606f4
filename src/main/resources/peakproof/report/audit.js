'use strict';
(() => {
  const form = document.querySelector('form.filter');
  const open = () => {
    const place = location.hash.length > 1 ? document.getElementById(decodeURIComponent(location.hash.slice(1))) : null;
    const details = place && place.closest('details');
    if (details) {
      details.open = true;
      details.querySelector('summary').scrollIntoView({block: 'start'});
    }
  };
  addEventListener('hashchange', open);
  open();
  if (!form) {
    return;
  }
  form.hidden = false;
  const filter = () => {
    const severities = [...form.querySelectorAll('[name=severity]:checked')].map(box => box.value);
    const theme = form.elements.theme.value;
    const shows = one => severities.includes(one.dataset.severity) && (theme === '' || theme === one.dataset.theme);
    const cards = [...document.querySelectorAll('.card')];
    cards.forEach(card => { card.hidden = !shows(card); });
    document.querySelectorAll('.pin').forEach(pin => { pin.hidden = !shows(pin); });
    const left = cards.filter(shows).length;
    form.querySelector('output').textContent = left === cards.length ? '' : left + ' of ' + cards.length;
  };
  form.addEventListener('change', filter);
  form.addEventListener('submit', event => event.preventDefault());
  filter();
})();
