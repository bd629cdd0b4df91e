// Ticks are tenths of a millimetre or sixty-fourths of an inch.
let inch = false;

const useInches = is => { inch = is; };

const fraction = (n, of) => { while (n && n % 2 === 0) { n /= 2; of /= 2; } return n ? `${n}/${of}` : ''; };

/** As drawings print it: 1250, 311.5; 8'-0 3/8", 7 7/8". */
function lengthText(ticks) {
  if (!inch) return String(ticks / 10);
  const sixteenths = Math.floor((Math.abs(ticks) + 2) / 4), feet = Math.floor(sixteenths / 192), rest = sixteenths % 192;
  const inches = Math.floor(rest / 16), part = fraction(rest % 16, 16);
  const whole = inches || feet || !part ? String(inches) : '';
  return `${ticks < 0 && sixteenths ? '-' : ''}${feet ? `${feet}'-` : ''}${whole}${whole && part ? ' ' : ''}${part}"`;
}

const withUnit = ticks => lengthText(ticks) + (inch ? '' : ' mm');

const sizeText = (width, height) => `${lengthText(width)} x ${withUnit(height)}`;

/** Along the wall or up: how far and which way; empty where not at all. */
const wayText = (ticks, positive, negative) => ticks ? `${withUnit(Math.abs(ticks))} ${ticks > 0 ? positive : negative}` : '';
