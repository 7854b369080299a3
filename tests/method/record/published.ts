/** NIST StRD, linear regression, Norris: calibration of ozone monitors (public domain; data and certified values read). */
export const NORRIS = {
  x: [
    0.2, 337.4, 118.2, 884.6, 10.1, 226.5, 666.3, 996.3, 448.6, 777.0, 558.2, 0.4, 0.6, 775.5, 666.9, 338.0,
    447.5, 11.6, 556.0, 228.1, 995.8, 887.6, 120.2, 0.3, 0.3, 556.8, 339.1, 887.2, 999.0, 779.0, 11.1, 118.3,
    229.2, 669.1, 448.9, 0.5,
  ],
  y: [
    0.1, 338.8, 118.1, 888.0, 9.2, 228.1, 668.5, 998.5, 449.1, 778.9, 559.2, 0.3, 0.1, 778.1, 668.8, 339.3,
    448.9, 10.8, 557.7, 228.3, 998.0, 888.8, 119.6, 0.3, 0.6, 557.6, 339.3, 888.0, 998.5, 778.9, 10.2, 117.6,
    228.9, 668.4, 449.2, 0.2,
  ],
  intercept: -0.262323073774029,
  slope: 1.00211681802045,
  interceptDeviation: 0.232818234301152,
  slopeDeviation: 0.000429796848199937,
  residualDeviation: 0.884796396144373,
} as const;

/** JCGM 100:2008 annex H.3, table H.6 (text read): a thermometer calibrated as a straight line. */
export const THERMOMETER = {
  t: [21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.01, 26.511],
  b: [-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.16],
  t0: 20,
} as const;

/** Fritsch and Carlson, SIAM J. Numer. Anal. 17 (1980) 238–246, data RPN 14 (read). */
export const RPN14 = {
  x: [7.99, 8.09, 8.19, 8.7, 9.2, 10, 12, 15, 20],
  f: [0, 2.76429e-5, 4.37498e-2, 0.169183, 0.469428, 0.94374, 0.998636, 0.999919, 0.999994],
} as const;

/** The results that the NAG library prints in the example of its monotone piecewise cubic (read). */
export const RPN14_BETWEEN = [
  [7.99, 0],
  [9.191, 0.464],
  [10.392, 0.9645],
  [11.593, 0.9965],
  [12.794, 0.9992],
  [13.995, 0.9998],
  [15.196, 0.9999],
  [16.397, 1],
  [17.598, 1],
  [18.799, 1],
  [20, 1],
] as const;
