/** Version of the rules: changes whenever a number, verdict or finding could come out otherwise. */
export const version = '0.6.3';
