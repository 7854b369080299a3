/**
 * Spellings of units and of how a vibration is counted that are not English ones, each with the English one, in texts with
 * single spaces. From memory.
 */
export const unitSpellings: readonly (readonly [pattern: RegExp, english: string])[] = [
  [/(v) ?(?:cc|dc|gs|c\.c\.)(?![\p{L}\p{N}])/giu, '$1'],
  [
    /(?<![\p{L}\p{N}])(?:spitze ?(?:[-–/] ?)?(?:zu ?(?:[-–/] ?)?)?spitze|s ?[-–/.] ?s\.?|ss)(?![\p{L}\p{N}])/giu,
    'p-p',
  ],
  [
    /(?<![\p{L}\p{N}])(?:cr[êe]te ?(?:[-–/] ?)?(?:[àa] ?(?:[-–/] ?)?)?cr[êe]te|c ?[-–/.] ?(?:[àa] ?[-–/.] ?)?c\.?|cc|c [àa] c)(?![\p{L}\p{N}])/giu,
    'p-p',
  ],
  [
    /(?<![\p{L}\p{N}])(?:pico ?(?:[-–/] ?)?(?:a ?(?:[-–/] ?)?)?pico|picco ?(?:[-–/] ?)?(?:a ?(?:[-–/] ?)?)?picco|pap|p ?\. ?a ?\. ?p\.?|p ?\. ?p\.?)(?![\p{L}\p{N}])/giu,
    'p-p',
  ],
  [
    /(?<![\p{L}\p{N}])(?:0 ?[-–/] ?s|null(?: ?[-–/] ?| )spitze|0 ?[-–/] ?spitze|0 ?[-–/] ?c|z[ée]ro(?: ?[-–/] ?| )cr[êe]te|0 ?[-–/] ?cr[êe]te|cero(?: ?[-–/] ?| )pico|0 ?[-–/] ?pico|zero(?: ?[-–/] ?| )pico|zero(?: ?[-–/] ?| )picco|0 ?[-–/] ?picco|o ?[-–/] ?s)(?![\p{L}\p{N}])/giu,
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
