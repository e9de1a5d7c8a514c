// Elements and words, nothing more.

/** An element; attributes that are null are left out, functions are listened with. */
export function el(tag, attributes = {}, ...children) {
  const made = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) {
    if (value === null || value === undefined || value === false) continue;
    if (typeof value === 'function') made.addEventListener(name, value);
    else made.setAttribute(name, value === true ? '' : value);
  }
  made.append(...children.flat().filter(child => child !== null && child !== undefined));
  return made;
}

/** Draws anew what is inside an element; what is null is left out. */
export function fill(element, ...children) {
  element.replaceChildren(...children.flat().filter(child => child !== null && child !== undefined));
}

/** Writes a text only where it changed, so that nothing is painted that stays. */
export function write(element, text) {
  if (element.textContent !== text) element.textContent = text;
}

/** The texts of the page, handed over by the desk: {0} stands for the first argument. */
export function wordsOf(texts) {
  const say = (key, ...given) => {
    const text = texts[key];
    if (text === undefined) throw new Error('There is no text ' + key);
    return text.replace(/\{(\d)\}/g, (_, n) => String(given[Number(n)] ?? ''));
  };
  /** The text for one, or for any other number. */
  say.many = (key, n, ...given) => say(key + (n === 1 ? '.one' : '.many'), n, ...given);
  return say;
}
