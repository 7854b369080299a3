import type { Kind } from '../../../model/channel.ts';
import type { Words } from './wordList.ts';
import { headerKey } from '../../tables/header.ts';

/** What people write into a cell for which they have nothing. From memory. */
export const blankMarks: Words = {
  en: 'n/a | na | n.a. | none | nil | tbc | tbd | tba | not known | unknown | not measured | not tested | not adjusted | no adjustment | not available | not applicable | pending | to follow | blank | not fitted | not used | unchanged | no change | awaiting retest | out of service | not set | disabled',
  de: 'entfällt | keine | kein | k.a. | k. a. | offen | nicht gemessen | nicht geprüft | nicht bekannt | unbekannt | nicht justiert | unverändert | folgt | ausser betrieb | außer betrieb',
  es: 'ninguno | ninguna | no aplica | n/d | nd | sin dato | sin datos | no medido | no ajustado | sin ajuste | pendiente | por confirmar | fuera de servicio | sin cambio',
  fr: 'néant | aucun | aucune | s.o. | so | sans objet | non mesuré | non réglé | non ajusté | à confirmer | inconnu | inchangé | hors service | nc | n.c.',
  pt: 'nenhum | nenhuma | não aplicável | não se aplica | n/d | não medido | não ajustado | pendente | a confirmar | desconhecido | fora de serviço | sem alteração',
  it: 'nessuno | nessuna | non applicabile | non misurato | non regolato | da confermare | da definire | sconosciuto | fuori servizio | invariato | n.d.',
};

/** Words in the names of sheets that say what is on them, so that they are no machines. From memory. */
export const listWords: Words = {
  en: 'sheet | list | table | data | probe | probes | channel | channels | setpoint | setpoints | setting | settings | measurement | measurements | test | tests | reading | readings | legend | note | notes | calibration | calibrations | rack | monitor | panel | summary | overview | input | inputs | field | loop test | survey | all | main | index | log',
  de: 'tabelle | tabelle1 | blatt | liste | daten | messstellen | grenzwerte | messung | messungen | prüfung | einstellung | einstellungen | legende | übersicht | schrank | überwachung | monitor | kalibrierung | protokoll',
  es: 'hoja | lista | tabla | datos | sondas | canales | ajustes | medición | mediciones | prueba | leyenda | resumen | bastidor | panel | calibración | campo',
  fr: 'feuille | feuil | liste | tableau | données | sondes | voies | réglages | mesure | mesures | essai | essais | légende | synthèse | baie | châssis | étalonnage | terrain',
  pt: 'folha | planilha | lista | tabela | dados | sondas | canais | ajustes | medição | medições | teste | legenda | resumo | painel | bastidor | calibração | campo',
  it: 'foglio | elenco | lista | tabella | dati | sonde | canali | impostazioni | misura | misure | prova | prove | legenda | riepilogo | quadro | pannello | taratura | campo',
};

/** Words with which lines of signatures below a list begin. From memory. */
export const signatureWords: Words = {
  en: 'prepared | prepared by | checked | checked by | approved | approved by | reviewed | reviewed by | issued | issued by | author | tested by | verified by | done by | carried out by | performed by | signed | signed by | signature | signatures | witnessed | witnessed by | accepted by | engineer | technician | name | date | page | rev | revision | document',
  de: 'erstellt | erstellt von | geprüft | geprüft von | freigegeben | freigegeben von | genehmigt | durchgeführt | durchgeführt von | ausgeführt von | bearbeiter | prüfer | unterschrift | name | datum | seite | stand',
  es: 'elaborado | elaborado por | realizado | realizado por | ejecutado por | revisado | revisado por | aprobado | aprobado por | verificado por | firma | nombre | fecha | responsable | técnico | hoja | página',
  fr: 'établi | établi par | réalisé par | exécuté par | vérifié | vérifié par | contrôlé par | approuvé | approuvé par | rédigé par | signature | visa | nom | date | responsable | technicien | page',
  pt: 'elaborado | elaborado por | executado | executado por | realizado por | verificado | verificado por | aprovado | aprovado por | revisado por | assinatura | nome | data | responsável | técnico | página',
  it: 'redatto | redatto da | eseguito | eseguito da | verificato | verificato da | controllato da | approvato | approvato da | firma | nome | data | responsabile | tecnico | pagina',
};

/** What people write where something holds or does not. From memory. */
export const flagWords: Words = {
  en: 'yes | no | on | off | true | false',
  de: 'ja | nein | ein | aus',
  es: 'sí | no',
  fr: 'oui | non',
  pt: 'sim | não',
  it: 'sì | no',
};

/** First words of rows that sum a list up. From memory. */
export const totalWords: Words = {
  en: 'total | totals | average | mean | avg | sum | count | number of | max | min | maximum | minimum | median | std dev | standard deviation | points total | total points | overall | subtotal | grand total',
  de: 'summe | gesamt | anzahl | mittelwert | mittel | durchschnitt | insgesamt | zwischensumme | minimum | maximum',
  es: 'total | totales | promedio | media | suma | cantidad | puntos en total | mínimo | máximo | subtotal | número de',
  fr: 'total | totaux | moyenne | somme | nombre | nombre de | sous total | minimum | maximum | moy',
  pt: 'total | totais | média | soma | quantidade | número de | mínimo | máximo | subtotal',
  it: 'totale | totali | media | somma | numero | numero di | minimo | massimo | subtotale',
};

/** First words of rows kept for later that hold no channel. From memory. */
export const spareWords: Words = {
  en: 'spare | reserve | reserved | not used | unused | vacant | empty',
  de: 'reserve | frei | unbenutzt | nicht belegt',
  es: 'reserva | libre | vacante | repuesto',
  fr: 'réserve | libre | non utilisé',
  pt: 'reserva | livre | vago',
  it: 'riserva | libero | scorta',
};

/** Words under Type, Sensor or Position that tell the kind of a channel. From memory. */
export const kindWordsOf: Readonly<Record<Kind, Words>> = {
  axial: {
    en: 'axial | axial position | thrust | thrust position | thrust bearing | axial displacement | rotor position | axial pos | thrust pos',
    de: 'axial* | axiallage | axialposition | axialverschiebung | wellenlage | schub | axiallager | drucklager',
    es: 'axial | posición axial | empuje | desplazamiento axial | cojinete de empuje',
    fr: 'axial* | position axiale | butée | déplacement axial | poussée',
    pt: 'axial | posição axial | escora | deslocamento axial | mancal de escora',
    it: 'assiale | posizione assiale | spinta | reggispinta | spostamento assiale',
  },
  radial: {
    en: 'radial | radial vibration | shaft vibration | vibration | displacement | relative shaft vibration | journal | proximity | eddy current | relative | vib | shaft vib | radial vib | rel vib',
    de: 'radial* | wellenschwingung | relative wellenschwingung | schwingung | wegaufnehmer | wirbelstrom',
    es: 'radial | vibración radial | vibración de eje | vibración | proximidad',
    fr: "radial* | vibration radiale | vibration d'arbre | vibration | proximité",
    pt: 'radial | vibração radial | vibração de eixo | vibração | proximidade',
    it: "radiale | vibrazione radiale | vibrazione d'albero | vibrazione | prossimità",
  },
  velocity: {
    en: 'velocity | casing velocity | casing vibration velocity | seismic | housing velocity | velometer | bearing housing velocity',
    de: 'geschwindigkeit | schwinggeschwindigkeit | gehäuseschwingung | lagerschwingung | seismisch',
    es: 'velocidad | velocidad de carcasa | sísmico | sísmica',
    fr: 'vitesse | vitesse carter | vitesse vibratoire | sismique',
    pt: 'velocidade | velocidade de carcaça | sísmico',
    it: 'velocità | velocità cassa | sismico',
  },
  acceleration: {
    en: 'acceleration | accelerometer | accel',
    de: 'beschleunigung | beschleunigungsaufnehmer',
    es: 'aceleración | acelerómetro',
    fr: 'accélération | accéléromètre',
    pt: 'aceleração | acelerômetro',
    it: 'accelerazione | accelerometro',
  },
  loop: {
    en: 'loop | 4-20 mA | 4-20 mA loop | current loop',
    de: 'stromschleife',
    es: 'lazo',
    fr: 'boucle',
    pt: 'malha',
    it: 'anello',
  },
};

/** Words for something else that a monitor watches, which is no channel of these kinds. From memory. */
export const otherKindWords: Words = {
  en: 'keyphasor | phase reference | phase | speed | temperature | tachometer | key phase',
  de: 'phase | drehzahl | temperatur | phasengeber',
  es: 'fase | velocidad de giro | temperatura',
  fr: 'phase | vitesse de rotation | température',
  pt: 'fase | rotação | temperatura',
  it: 'fase | giri | temperatura',
};

/** Names of the two probes of one place, in order. */
const axes: readonly (readonly [first: string, second: string])[] = [
  ['X', 'Y'],
  ['A', 'B'],
  ['V', 'H'],
  ['H', 'V'],
  ['U', 'V'],
  ['1', '2'],
  ['L', 'R'],
  ['left', 'right'],
  ['X probe', 'Y probe'],
  ['probe X', 'probe Y'],
  ['probe A', 'probe B'],
  ['X axis', 'Y axis'],
  ['sonda X', 'sonda Y'],
  ['sonde X', 'sonde Y'],
  ['geber X', 'geber Y'],
  ['vertical', 'horizontal'],
  ['vertikal', 'horizontal'],
  ['45L', '45R'],
  ['45°L', '45°R'],
  ['X direction', 'Y direction'],
  ['direction X', 'direction Y'],
];

/** What makes a number no certain one: a person has to say that it holds. From memory. */
export const doubtWords: Words = {
  en: 'approx | approx. | about | ca | circa | estimated | est | roughly | nominal | typ',
  de: 'ca | etwa | ungefähr | geschätzt | rund',
  es: 'aprox | aproximadamente | unos | estimado',
  fr: 'env | environ | approx | estimé',
  pt: 'aprox | cerca de | aproximadamente | estimado',
  it: 'circa | ca | approssimativo | stimato',
};

/** A word for one of two probes of a place, as it stands, with its pair and its place in it. */
interface Axis {
  readonly name: string;
  /** Key of the pair, and 0 or 1 in it: `X` is the first of `X Y`. */
  readonly pairs: readonly (readonly [pair: string, at: 0 | 1])[];
}

const known = new Map<string, [string, 0 | 1][]>();

for (const [first, second] of axes) {
  const pair = `${headerKey(first)} ${headerKey(second)}`;
  for (const [word, at] of [
    [first, 0],
    [second, 1],
  ] as const) {
    const key = headerKey(word);
    known.set(key, [...(known.get(key) ?? []), [pair, at]]);
  }
}

/** The probe that a text names where it stands alone: `X`, `Probe Y`, `45L`. */
export function axisOf(text: string): Axis | undefined {
  const pairs = known.get(headerKey(text));
  return pairs && { name: text.trim(), pairs };
}
