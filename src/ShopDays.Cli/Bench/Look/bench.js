// Makes the pages follow each other and count on. Without it everything can be done as well, by loading pages.
(() => {
  'use strict';
  const main = () => document.getElementById('main');

  // A form goes once: a second tap while it is under way is no second wish.
  document.addEventListener('submit', event => {
    if (event.target.dataset.sent) { event.preventDefault(); return; }
    event.target.dataset.sent = 'yes';
  });
  window.addEventListener('pageshow', () => {
    for (const form of document.querySelectorAll('form[data-sent]')) { delete form.dataset.sent; }
  });

  // The clock of the task at hand, from the minutes that the page came with.
  const loaded = performance.now();
  let began = loaded;
  const tick = () => {
    const clock = document.querySelector('.clock[data-minutes]');
    if (!clock) { return; }
    const minutes = Math.floor(Number(clock.dataset.minutes) + (performance.now() - began) / 60000);
    clock.textContent = `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, '0')}`;
  };
  setInterval(tick, 1000);

  // Somebody is writing, or has something open: the page stays as it is until that is done.
  const isBusy = () => {
    const at = document.activeElement;
    if (at && main().contains(at) && /^(INPUT|SELECT|TEXTAREA)$/.test(at.tagName)) { return true; }
    return [...main().querySelectorAll('input:not([type=hidden]), textarea')].some(one => one.value !== one.defaultValue)
      || main().querySelector('details[open]') !== null;
  };

  let isDue = false;
  const renew = async () => {
    if (main().dataset.live !== 'yes' || document.hidden || isBusy()) { isDue = true; return; }
    isDue = false;
    const answer = await fetch(location.href, { headers: { accept: 'text/html' } });
    if (!answer.ok) { return; }
    const page = new DOMParser().parseFromString(await answer.text(), 'text/html');
    const newer = page.getElementById('main');
    if (!newer || isBusy()) { return; }
    // What was just said stays to be read.
    const said = main().querySelector('.said');
    if (said && !newer.querySelector('.said') && performance.now() - loaded < 15000) { newer.prepend(said); }
    main().replaceWith(newer);
    began = performance.now();
    tick();
  };
  const again = () => { if (isDue) { renew().catch(() => { isDue = true; }); } };
  document.addEventListener('visibilitychange', () => { if (!document.hidden) { isDue = true; again(); } });
  document.addEventListener('focusout', () => setTimeout(again, 500));

  // A page that is not looked at does not listen: a browser has six lines to one place, and a seventh page would never
  // come. Whoever listens again may have missed something.
  let line = null;
  const hush = () => { if (line) { line.close(); line = null; } };
  const listen = () => {
    if (line || document.hidden || !main() || main().dataset.live !== 'yes' || !('EventSource' in window)) { return; }
    line = new EventSource('/live');
    line.addEventListener('changed', () => { isDue = true; again(); });
    let isCut = false;
    line.addEventListener('error', () => { isCut = true; });
    line.addEventListener('open', () => { if (isCut) { isCut = false; isDue = true; again(); } });
  };
  document.addEventListener('visibilitychange', () => { if (document.hidden) { hush(); } else { listen(); } });
  window.addEventListener('pagehide', hush);
  window.addEventListener('pageshow', listen);
  listen();
})();
