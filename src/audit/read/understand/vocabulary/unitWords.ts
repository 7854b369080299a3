/** Spellings of units and of how a vibration is counted that are not English ones, each with the English one. From memory. */
export const unitSpellings: readonly (readonly [pattern: RegExp, english: string])[] = [
  [/(?<=v)\s*(?:cc|dc|gs|c\.c\.)(?![\p{L}\p{N}])/giu, ''],
  [
    /(?<![\p{L}\p{N}])(?:spitze\s*[-–/ ]?\s*(?:zu\s*[-–/ ]?\s*)?spitze|s\s*[-–/.]\s*s\.?|ss)(?![\p{L}\p{N}])/giu,
    'p-p',
  ],
  [
    /(?<![\p{L}\p{N}])(?:cr[êe]te\s*[-–/ ]?\s*(?:[àa]\s*[-–/ ]?\s*)?cr[êe]te|c\s*[-–/.]\s*(?:[àa]\s*[-–/.]\s*)?c\.?|cc|c\s+[àa]\s+c)(?![\p{L}\p{N}])/giu,
    'p-p',
  ],
  [
    /(?<![\p{L}\p{N}])(?:pico\s*[-–/ ]?\s*(?:a\s*[-–/ ]?\s*)?pico|picco\s*[-–/ ]?\s*(?:a\s*[-–/ ]?\s*)?picco|pap|p\s*\.\s*a\s*\.\s*p\.?|p\s*\.\s*p\.?)(?![\p{L}\p{N}])/giu,
    'p-p',
  ],
  [
    /(?<![\p{L}\p{N}])(?:0\s*[-–/]\s*s|null\s*[-–/ ]\s*spitze|0\s*[-–/]\s*spitze|0\s*[-–/]\s*c|z[ée]ro\s*[-–/ ]\s*cr[êe]te|0\s*[-–/]\s*cr[êe]te|cero\s*[-–/ ]\s*pico|0\s*[-–/]\s*pico|zero\s*[-–/ ]\s*pico|zero\s*[-–/ ]\s*picco|0\s*[-–/]\s*picco|o\s*[-–/]\s*s)(?![\p{L}\p{N}])/giu,
    '0-p',
  ],
  [
    /(?<![\p{L}\p{N}])(?:eff|effektiv|effektivwert|efficace|eficaz|efficace|rcm|valeur efficace)\.?(?![\p{L}\p{N}])/giu,
    'rms',
  ],
  [
    /(?<![\p{L}\p{N}])(?:mikrometer|micras?|micrones|micr[oô]n|microm[eè]tres?|micr[oó]metros?|micrometri?|micr[oô]metros?|mikron)(?![\p{L}\p{N}])/giu,
    'µm',
  ],
  [/(?<![\p{L}\p{N}])(?:mil[eé]simas?(?: de pulgada)?|milli[eè]mes? de pouce)(?![\p{L}\p{N}])/giu, 'mil'],
  [/(?<=\p{L}\s?)(?<![\p{L}\p{N}])(?:je|pro|por|par|per)(?![\p{L}\p{N}])/giu, 'per'],
  [/(?<![\p{L}\p{N}])(?:volt(?:ios|i)|voltaje)(?![\p{L}\p{N}])/giu, 'V'],
  [/(?<![\p{L}\p{N}])(?:u\/min|tr\/min|tpm|giri\/min|1\/min)(?![\p{L}\p{N}])/giu, 'rpm'],
  [
    /(?<![\p{L}\p{N}])(?:prozent|porcentaje|por ciento|pour\s?cent|por cento|per cento)(?![\p{L}\p{N}])/giu,
    '%',
  ],
];
