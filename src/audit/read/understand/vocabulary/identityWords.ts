import type { ConceptWords } from './word.ts';

/** Words for what a row is about: its tag, machine and place, and what else stands beside quantities. */
export const identityWords: readonly ConceptWords[] = [
  {
    concept: 'tag',
    from: 'memory',
    strong: {
      en: ['tag', 'tags', 'tag no', 'tag number', 'tag name', 'tag id', 'point tag', 'instrument tag', 'instrument', 'instrument no', 'instrument name', 'loop', 'loop no', 'loop tag', 'probe tag', 'channel tag', 'channel name', 'point id', 'point name', 'transducer', 'measuring point', 'measurement point', 'probe no', 'probe id', 'loop number', 'instrument number', 'sensor tag'],
      de: ['messstelle', 'messstellen nr', 'messstellennummer', 'messstellenbezeichnung', 'KKS', 'KKS Nr', 'KKS nummer', 'kennzeichen', 'AKZ', 'TAG', 'tag nr', 'messpunkt', 'PLT stelle', 'EMSR stelle', 'anlagenkennzeichen', 'messkreis', 'geber nr'],
      es: ['código', 'etiqueta', 'punto de medida', 'punto de medición', 'instrumento', 'tag', 'lazo', 'identificación', 'TAG del punto', 'nº de tag'],
      fr: ['repère', 'point de mesure', 'repère capteur', 'boucle', 'tag', 'identifiant', 'code', 'instrument'],
      pt: ['ponto de medição', 'ponto de medida', 'tag', 'instrumento', 'malha', 'identificação', 'código'],
      it: ['punto di misura', 'sigla', 'codice', 'tag', 'strumento', 'anello', 'siglatura', 'identificativo'],
    },
    weak: {
      en: ['channel', 'chan', 'ch', 'point', 'item', 'probe', 'sensor', 'position', 'name', 'id', 'description', 'measuring position', 'pick-up', 'pickup', 'location', 'bearing'],
      de: ['kanal', 'punkt', 'aufnehmer', 'sensor', 'geber', 'sonde', 'position', 'bezeichnung', 'lager', 'lagerstelle', 'wegaufnehmer'],
      es: ['canal', 'punto', 'sonda', 'sensor', 'posición', 'elemento', 'nombre', 'cojinete', 'captador'],
      fr: ['voie', 'point', 'capteur', 'sonde', 'position', 'nom', 'désignation', 'palier'],
      pt: ['canal', 'ponto', 'sonda', 'sensor', 'posição', 'nome', 'mancal', 'item'],
      it: ['canale', 'punto', 'sonda', 'sensore', 'posizione', 'nome', 'cuscinetto', 'supporto'],
    },
  },
  {
    concept: 'machine',
    from: 'memory',
    strong: {
      en: ['machine', 'machine name', 'machine tag', 'machine train', 'equipment', 'equipment no', 'equipment tag', 'equipment name', 'train', 'asset', 'asset no', 'asset number', 'machinery', 'driver'],
      de: ['maschine', 'aggregat', 'maschinensatz', 'maschinenstrang', 'anlage', 'anlagenteil', 'strang'],
      es: ['máquina', 'equipo', 'tren', 'activo'],
      fr: ['machine', 'équipement', 'groupe', 'ligne', 'appareil'],
      pt: ['máquina', 'equipamento', 'ativo', 'trem'],
      it: ['macchina', 'macchinario', 'apparecchiatura', 'treno', 'gruppo'],
    },
    weak: {
      en: ['unit', 'service', 'plant item', 'duty', 'shaft', 'rotor'],
      de: ['welle', 'einheit', 'gruppe', 'läufer'],
      es: ['unidad', 'servicio', 'grupo', 'eje'],
      fr: ['unité', 'service', 'ensemble', 'ligne d arbre'],
      pt: ['unidade', 'serviço', 'grupo', 'conjunto'],
      it: ['unità', 'servizio', 'albero', 'impianto'],
    },
  },
  {
    concept: 'location',
    from: 'memory',
    strong: {
      en: ['probe location', 'location', 'bearing', 'bearing no', 'brg', 'position'],
      de: ['lager', 'lagerstelle', 'einbauort', 'lage'],
      es: ['ubicación', 'cojinete', 'posición'],
      fr: ['palier', 'emplacement', 'localisation', 'position'],
      pt: ['localização', 'mancal', 'posição'],
      it: ['ubicazione', 'cuscinetto', 'supporto', 'posizione'],
    },
  },
  {
    concept: 'kind',
    from: 'memory',
    strong: { en: ['kind', 'channel kind', 'channel type', 'measurement kind', 'measurement type', 'kind of measurement', 'type of measurement'], de: ['messart', 'messgröße', 'art der messung'], es: ['tipo de medida', 'tipo de medición'], fr: ['type de mesure', 'nature de mesure'], pt: ['tipo de medição', 'tipo de medida'], it: ['tipo di misura'] },
    weak: { en: ['type', 'sensor', 'sensor type', 'position', 'measurement'], de: ['art', 'typ'], es: ['tipo'], fr: ['type'], pt: ['tipo'], it: ['tipo'] },
  },
  {
    concept: 'date',
    from: 'memory',
    strong: {
      en: ['date', 'test date', 'tested on', 'date tested', 'cal date', 'calibration date', 'calibrated on', 'date of test', 'measured on', 'date measured', 'checked on', 'test day', 'date of calibration', 'verified on', 'taken on'],
      de: ['datum', 'geprüft am', 'prüfdatum', 'messdatum', 'gemessen am', 'kalibriert am', 'prüftag', 'kalibrierdatum'],
      es: ['fecha', 'fecha de prueba', 'fecha de calibración', 'fecha de medición', 'probado el', 'comprobado el', 'medido el'],
      fr: ['date', "date d'essai", 'date de mesure', "date d'étalonnage", 'mesuré le', 'contrôlé le', 'vérifié le', 'étalonné le'],
      pt: ['data', 'data do teste', 'data de medição', 'data da calibração', 'testado em', 'medido em', 'verificado em', 'calibrado em'],
      it: ['data', 'data prova', 'data di prova', 'data misura', 'data taratura', 'provato il', 'misurato il', 'verificato il', 'tarato il'],
    },
  },
  {
    concept: 'unit',
    from: 'memory',
    strong: { en: ['units', 'uom', 'engineering units', 'engineering unit', 'EU', 'unit of measure', 'setpoint unit', 'setpoint units'], de: ['einheit', 'einheiten', 'maßeinheit'], es: ['unidades', 'unidad de medida'], fr: ['unités', 'unité de mesure'], pt: ['unidades', 'unidade de medida'], it: ['unità di misura', 'u m'] },
    weak: { en: ['unit'], es: ['unidad'], fr: ['unité'], pt: ['unidade'], it: ['unità'] },
  },
  {
    concept: 'person',
    from: 'memory',
    strong: { en: ['by', 'tested by', 'read by', 'checked by', 'signed', 'technician', 'initials', 'walked down by', 'engineer', 'done by'], de: ['prüfer', 'geprüft von', 'gemessen von', 'bearbeiter', 'durch'], es: ['técnico', 'probado por', 'medido por', 'responsable'], fr: ['contrôleur', 'vérifié par', 'mesuré par', 'technicien', 'opérateur'], pt: ['técnico', 'medido por', 'testado por', 'responsável'], it: ['tecnico', 'provato da', 'misurato da', 'verificato da', 'operatore'] },
  },
  {
    concept: 'remark',
    from: 'memory',
    strong: { en: ['remark', 'remarks', 'comment', 'comments', 'note', 'notes', 'status', 'result', 'verdict', 'action'], de: ['bemerkung', 'bemerkungen', 'kommentar', 'hinweis', 'ergebnis'], es: ['observaciones', 'comentario', 'comentarios', 'notas', 'resultado', 'estado'], fr: ['remarque', 'remarques', 'commentaire', 'observations', 'résultat'], pt: ['observações', 'observação', 'comentário', 'comentários', 'obs'], it: ['note', 'osservazioni', 'commento', 'esito'] },
  },
  {
    concept: 'ordinal',
    from: 'memory',
    strong: { en: ['no', '#', 'item no', 'line', 'seq', 'row', 's no', 'sl no', 'slot', 'card', 'rack slot', 'rack no', 'rack', 'rev', 'drawing', 'sheet', 'count', 'points', 'qty', 'total'], de: ['nr', 'lfd nr', 'pos nr', 'zeile', 'steckplatz', 'karte', 'anzahl', 'blatt'], es: ['nº', 'n', 'línea', 'fila', 'ranura', 'tarjeta', 'cantidad', 'hoja'], fr: ['n', 'numéro', 'ligne n', 'carte', 'emplacement carte', 'quantité', 'feuille'], pt: ['nº', 'n', 'linha', 'cartão', 'quantidade', 'folha'], it: ['n', 'nr', 'riga', 'scheda', 'slot', 'quantità', 'foglio'] },
  },
  {
    concept: 'series',
    from: 'memory',
    strong: { en: ['series', 'condition', 'state', 'found left', 'as found as left', 'as found or as left', 'found or left', 'run'], de: ['zustand', 'vorgefunden hinterlassen'], es: ['condición', 'estado'], fr: ['état', 'condition'], pt: ['condição', 'estado'], it: ['condizione', 'stato'] },
  },
  {
    concept: 'other',
    from: 'memory',
    strong: {
      en: ['serial', 'serial no', 's n', 'model', 'cable', 'cable length', 'extension', 'supply', 'supply voltage', 'temperature', 'temp', 'resistance', 'runout', 'run-out', 'clearance', 'diameter', 'length', 'certificate', 'order', 'linearity', 'linear range', 'noise', 'ac', 'filter', 'current', 'pressure', 'flow', 'count', 'hysteresis', 'last alarm', 'probe type', 'manufacturer', 'depth', 'thread', 'proximitor serial', 'barrier', 'junction box'],
      de: ['seriennummer', 'modell', 'kabel', 'kabellänge', 'versorgung', 'temperatur', 'widerstand', 'rundlauf', 'durchmesser', 'zeugnis', 'zertifikat', 'linearität', 'hysterese', 'spiel', 'länge', 'strom'],
      es: ['serie', 'número de serie', 'modelo', 'cable', 'alimentación', 'temperatura', 'resistencia', 'diámetro', 'certificado', 'linealidad', 'longitud', 'juego', 'histéresis'],
      fr: ['série', 'numéro de série', 'modèle', 'câble', 'alimentation', 'température', 'résistance', 'diamètre', 'certificat', 'linéarité', 'longueur', 'jeu', 'hystérésis'],
      pt: ['série', 'número de série', 'modelo', 'cabo', 'alimentação', 'temperatura', 'resistência', 'diâmetro', 'certificado', 'linearidade', 'comprimento', 'histerese'],
      it: ['serie', 'numero di serie', 'matricola', 'modello', 'cavo', 'alimentazione', 'temperatura', 'resistenza', 'diametro', 'certificato', 'linearità', 'lunghezza', 'gioco', 'isteresi'],
    },
  },
];
