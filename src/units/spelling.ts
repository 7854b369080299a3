const SPELLINGS: readonly (readonly [symbol: string, spellings: string])[] = [
  ['um', 'um μm micron microns micrometre micrometres micrometer micrometers'],
  ['mm', 'mm millimetre millimetres millimeter millimeters'],
  ['cm', 'cm centimetre centimetres centimeter centimeters'],
  ['m', 'm metre metres meter meters'],
  ['mil', 'mil mils thou thous'],
  ['inch', 'in inch inches "'],
  ['mV', 'mv millivolt millivolts'],
  ['V', 'v volt volts'],
  ['mA', 'ma milliamp milliamps milliampere milliamperes'],
  ['A', 'a amp amps ampere amperes'],
  ['ms', 'ms msec millisecond milliseconds'],
  ['s', 's sec secs second seconds'],
  ['min', 'min mins minute minutes'],
  ['h', 'h hr hrs hour hours'],
  ['day', 'd day days'],
  ['week', 'wk wks week weeks'],
  ['g', 'g gs gn'],
  ['percent', '% pct percent'],
  ['(inch/s)', 'ips'],
  ['/', 'per'],
  ['^2', 'squared'],
];

const SYMBOLS: ReadonlyMap<string, string> = new Map(
  SPELLINGS.flatMap(([symbol, spellings]) =>
    spellings.split(' ').map((spelling) => [spelling, symbol] as const),
  ),
);

/**
 * The symbol of one lower-case word of a unit text, or `undefined`. Case carries no meaning here: `MV` in a
 * channel list is a slip for mV, never a megavolt.
 */
export function symbolOf(word: string): string | undefined {
  return SYMBOLS.get(word);
}
