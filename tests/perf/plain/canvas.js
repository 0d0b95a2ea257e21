// As many fills, strokes and texts as the drill's first frame has, by plain calls: what a page without libraries would take.
const context = document.querySelector('canvas').getContext('2d');
requestAnimationFrame(() => {
  (globalThis.drawn ?? []).forEach(([what, text, font], at) => {
    const x = (at * 97) % 1200;
    const y = (at * 61) % 680;
    if (what === 'fillText') {
      context.font = font;
      context.fillText(text, x, y);
    } else if (what === 'fillRect') {
      context.fillRect(x, y, 60, 20);
    } else {
      context.beginPath();
      context.arc(x, y, 20, 0, 6);
      context.lineTo(x + 30, y + 10);
      context[what]();
    }
  });
});
