import type { ConceptWords } from './wordList.ts';

/** Words for what else is measured of a chain: its monitor's gain, its length, the ends of its loop, its runout. */
export const chainWords: readonly ConceptWords[] = [
  {
    concept: 'monitor gain',
    from: 'memory',
    strong: {
      en: 'monitor gain | gain of monitor | gain of the monitor | gain indicated injected | indicated over injected | indicated injected',
      de: 'monitorverstärkung | verstärkung des monitors | verstärkung monitor | angezeigt eingespeist',
      es: 'ganancia del monitor',
      fr: 'gain du moniteur',
      pt: 'ganho do monitor',
      it: 'guadagno del monitor',
    },
  },
  {
    concept: 'runout amplitude',
    from: 'memory',
    strong: {
      en: 'runout amplitude | slow roll amplitude | slow roll runout amplitude | slow roll vector amplitude',
      de: 'langsamlaufamplitude | amplitude bei langsamlauf',
    },
  },
  {
    concept: 'runout phase',
    from: 'memory',
    strong: {
      en: 'runout phase | slow roll phase | slow roll runout phase | slow roll vector phase',
      de: 'langsamlaufphase | phase bei langsamlauf',
    },
  },
  {
    concept: 'runout sensitivity',
    from: 'memory',
    strong: { en: 'runout sensitivity | slow roll sensitivity | sensitivity at slow roll' },
  },
  { concept: '1X amplitude', from: 'memory', strong: { en: '1X amplitude | 1X vector amplitude' } },
  { concept: '1X phase', from: 'memory', strong: { en: '1X phase | 1X vector phase' } },
  {
    concept: 'chain length',
    from: 'memory',
    strong: {
      en: 'chain length | nominal chain length | nominal length of chain',
      de: 'kettenlänge | länge der messkette',
      es: 'longitud de la cadena',
      fr: 'longueur de la chaîne',
      pt: 'comprimento da cadeia',
      it: 'lunghezza della catena',
    },
  },
  {
    concept: 'loop zero',
    from: 'memory',
    strong: {
      en: 'loop current at 0 | loop current at zero | loop current 0 | current at 0 | loop zero | mA at 0',
      de: 'schleifenstrom bei 0 | strom bei 0 | schleifenstrom 0',
      es: 'corriente de lazo a 0 | corriente a 0',
      fr: 'courant de boucle à 0 | courant à 0',
      pt: 'corrente do laço em 0 | corrente a 0',
      it: 'corrente di anello a 0 | corrente a 0',
    },
  },
  {
    concept: 'loop span',
    from: 'memory',
    strong: {
      en: 'loop current at 100 | loop current at span | loop current 100 | current at 100 | loop span | mA at 100',
      de: 'schleifenstrom bei 100 | strom bei 100 | schleifenstrom 100',
      es: 'corriente de lazo a 100 | corriente a 100',
      fr: 'courant de boucle à 100 | courant à 100',
      pt: 'corrente do laço em 100 | corrente a 100',
      it: 'corrente di anello a 100 | corrente a 100',
    },
  },
];
