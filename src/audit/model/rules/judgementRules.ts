/** What can be said of a channel, its thresholds and its voting groups as they are judged. */
export interface JudgementRules {
  late: {
    readonly setpoint: number;
    readonly unit: string;
    readonly effective: number;
    readonly shift: number;
    readonly shiftFraction: number;
  };
}
