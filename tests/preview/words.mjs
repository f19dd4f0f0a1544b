// Sizes as a page prints them, worked out anew here from the report's metres.

/** Sixteenths of an inch as a carpenter writes them. */
export const inches = (metres) => inSixteenths(Math.round(metres / 0.0254 * 16));

/** What a guard or a width has at the least, rounded down. */
export const least = (metres) => inSixteenths(Math.floor((metres / 0.0254 * 16) + 1e-6));

function inSixteenths(sixteenths) {
  const [whole, rest] = [Math.floor(sixteenths / 16), sixteenths % 16];
  const divisor = [8, 4, 2, 1].find((d) => rest % d === 0);
  return rest === 0 ? `${whole} in` : `${whole > 0 ? `${whole}-` : ''}${rest / divisor}/${16 / divisor} in`;
}

export function feet(metres) {
  const whole = Math.floor(Math.round(metres / 0.0254 * 16) / 192);
  return `${whole} ft ${inches(metres - whole * 0.3048)}`;
}

const millimetres = (metres) => `${Math.round(metres * 1e4) / 10} mm`;
const wholeMillimetres = (metres) => `${Math.floor((metres * 1000) + 1e-6)} mm`;
const metric = (metres) => (metres > 1.8288 ? `${Math.round(metres * 1e3) / 1e3} m` : `${Math.round(metres * 1e3)} mm`);

/** Lengths, sizes of parts and least sizes in the units that the page's first figure has. */
export async function wordsOf(page) {
  const isMetric = / m?m$/.test((await page.locator('#key dd').first().textContent()).trim());
  return isMetric ? { length: metric, size: millimetres, least: wholeMillimetres } : { length: feet, size: inches, least };
}

/** The demand of a check. */
export const checkOf = (report, id) => report.checks.find((c) => c.id === id).demand;
