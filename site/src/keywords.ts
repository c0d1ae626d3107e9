/**
 * Words of the trade that a page does not use but its readers type. They are found by the search and shown nowhere.
 * Also how heavy a page weighs there: an example answers a question, an API page names a function.
 */

const ALL = 'LNB LNBF dish sat antenna align alignment installer';

const KEYWORDS: Readonly<Record<string, string>> = {
  '': 'dish pointing calculator compass elevation scale inclinometer LNB skew twist',
  'examples/where-is-the-satellite':
    'look angles look angles azimut elevation where to point the dish direction dish pointing azimuth elevation look angles compass bearing inclinometer elevation scale offset dish tilt how to align',
  'examples/how-far-to-turn-the-feed':
    'LNB skew twist LNB rotation polarisation polarization tilt of the LNB cross-pol',
  'examples/can-one-reflector-take-them-all':
    'two satellites one dish several satellites multiple feeds multifeed multi-feed monoblock toroidal several LNBs one dish',
  'examples/typed-coordinates':
    'GPS position degrees minutes seconds DMS UTM MGRS grid reference plus code',
  'examples/north-by-the-sun':
    'find north without compass compass declination magnetic variation true north shadow',
  'examples/is-the-view-clear':
    'trees in the way tree obstruction blocked view wall line of sight obstruction trees roof building inclinometer clinometer skyline',
  'examples/what-does-a-leaning-mast-do':
    'tripod not level mast not plumb crooked pole bent mast plumb pole mast tilt vertical spirit level',
  'examples/how-is-a-polar-mount-set': 'motor rotor H-H motorised actuator declination offset',
  'examples/half-way-back':
    'peaking peak signal fine tune fine alignment dish alignment how to align level meter turns',
  'examples/find-the-peak':
    'maximum signal highest level search practise peaking peak signal strength fine tune alignment meter',
  'examples/main-lobe-or-side-lobe': 'side lobe sidelobe false peak wrong peak weak signal',
  'examples/both-axes-in-turn': 'azimuth elevation alternate fine tune peaking',
  'examples/where-is-the-null':
    'crosspol cross-pol crosspol cross polar purity cross-pol crosspol XPD XPI isolation null skew LNB uplink test',
  'examples/when-to-peak-on-a-moving-satellite': 'inclined orbit drift tracking figure of eight',
  'examples/how-far-is-safe':
    'keep distance from dish radiation radiation hazard EMF exposure VSAT BUC transmit safety distance RF',
  'examples/sun-outages':
    'signal drops at noon drops out midday lost every day same time sun outage sun transit solar interference October March equinox',
  'examples/how-much-rain-margin':
    'thunderstorm no signal in rain storm heavy rain availability drops out when it rains rain fade availability link margin Ka band attenuation weather',
  'examples/what-the-air-takes': 'atmospheric loss gas water vapour oxygen cloud attenuation',
  'examples/does-the-link-close':
    'link budget budget link budget EIRP G/T C/N MER Eb/N0 VSAT uplink downlink footprint',
  'examples/which-reflector':
    'antenna too small reflector too small bigger dish larger dish dish size what size dish diameter LNB noise figure G/T',
  'examples/which-mode-when': 'DVB-S2 MODCOD ACM VCM adaptive coding modulation',
  'examples/do-the-neighbours-disturb':
    'adjacent satellite interference off-axis dish size spacing',
  'examples/levels-at-every-outlet':
    'coax attenuation coaxial cable length too long wall plate cable loss splitter tap multiswitch amplifier dBuV signal level wall plate outlet attenuation 50 m',
  'examples/what-is-wrong-here':
    'no signal no lock weak signal bad quality no signal fault finding troubleshooting low signal pixelation level too low MER BER LNB broken',
  'examples/accept-or-not':
    'acceptance measurement uncertainty pass fail limit guard band test report',
  'examples/which-frequency-do-i-tune':
    'LO frequency LNB frequency LOF local oscillator IF intermediate frequency L-band transponder frequency 9750 10600 5150 universal LNB low band high band 22 kHz tone 22khz 13V 18V 13/18 volt band switching polarity voltage inverted spectrum image wideband LNB wrong LO no lock frequenz frequency calculator tunning',
  'examples/how-do-several-receivers-share-one-cable':
    'single cable one cable several receivers SCR channel stacking user band userband EN 50494 EN 50607 EN50494 EN50607 tuning word single coax multiple receivers cascade daisy chain two receivers one cable',
  'examples/what-does-the-meter-really-say':
    'MER C/N CNR SNR Es/N0 Eb/N0 EsNo EbNo spectrum analyser analyzer RBW resolution bandwidth noise floor marker channel power meter reading quality BER convert MER to C/N signal quality percent',
  'examples/two-instruments-two-readings':
    'two meters differ meter offset calibration compare meters different readings second meter LNB gain differs level differs instrument offset systematic error cross check which meter is right',
  'examples/how-is-a-two-way-terminal-lined-up':
    'VSAT commissioning line-up lineup BUC power uplink EIRP P1dB 1 dB compression back-off saturation off-axis S.524 S.728 mask cross-pol test XPI CW carrier NOC hub control centre access test UPC uplink power control transmit setup',
  'examples/how-much-ballast-does-a-flat-roof-need':
    'non-penetrating mount ballast weight flat roof wind load paving slabs concrete blocks wind force moment mast bending sway gust how heavy tripod storm dish blown over balast',
  'examples/does-a-mobile-mast-disturb':
    '5G LTE 4G interference mobile phone mast cell tower DECT cordless phone ingress shielding screening class A coax C-band 5G filter freezes picture breaks up terrestrial interference',
  'examples/what-does-circular-polarization-lose':
    'LHCP RHCP left hand right hand circular polarisation axial ratio circular LNB linear LNB on circular 3 dB depolarizer dielectric plate Faraday rotation ionosphere C band L band',
  'examples/what-did-a-hundred-records-teach':
    'statistics many sites learn footprint correction drift re-peak sampling AQL acceptance sampling ISO 2859 ISO 3951 lot inspection operating characteristic OC curve how many to check quality',
  'start/one-job':
    'job sheet record commissioning report installation report site visit work order checklist service call as-built handover print dish installation step by step app for installers LNB antenna align',
  'reference/glossary': 'LNB LNBF low-noise block BUC OMT VSAT dish MER BER SNR inclinometer',
  'de/start/one-job':
    'Auftrag Arbeitsauftrag Montagebericht Messprotokoll Abnahmeprotokoll Übergabe Einsatz Kundendienst Checkliste Protokoll drucken Antennenmontage Schritt für Schritt LNB ausrichten',
  'de/examples/where-is-the-satellite':
    'Schüssel ausrichten Antenne ausrichten Azimut Elevation Kompass Spiegel einstellen Satellit suchen',
  'de/examples/how-far-to-turn-the-feed': 'LNB drehen LNB verdrehen Skew Polarisation Kippwinkel',
  'de/examples/can-one-reflector-take-them-all':
    'Multifeed zwei Satelliten eine Schüssel mehrere LNB Monoblock Schiene',
  'de/examples/typed-coordinates': 'GPS Koordinaten Grad Minuten Sekunden',
  'de/examples/north-by-the-sun': 'Norden finden ohne Kompass Schatten Missweisung',
  'de/examples/is-the-view-clear':
    'Baum im Weg Bäume Sichtlinie Hindernis Haus verdeckt freie Sicht',
  'de/examples/what-does-a-leaning-mast-do':
    'Mast schief Stativ nicht waagrecht waagerecht Lot Wasserwaage nicht senkrecht',
  'de/examples/how-is-a-polar-mount-set': 'Drehanlage Motor Rotor motorisiert',
  'de/examples/half-way-back': 'Feinausrichtung feinjustieren Maximum einpegeln nachstellen',
  'de/examples/find-the-peak': 'Signalstärke Maximum suchen Messgerät',
  'de/examples/main-lobe-or-side-lobe': 'Nebenkeule Nebenzipfel falsches Maximum',
  'de/examples/both-axes-in-turn': 'Azimut Elevation abwechselnd nachstellen',
  'de/examples/where-is-the-null': 'Kreuzpolarisation Entkopplung XPD Isolation',
  'de/examples/when-to-peak-on-a-moving-satellite':
    'geneigte Umlaufbahn Inklination wandernder Satellit',
  'de/examples/how-far-is-safe': 'Strahlung Abstand Sicherheitsabstand Strahlenschutz BUC Sender',
  'de/examples/sun-outages': 'Signal weg mittags Ausfall am Mittag Sonnenstörung Sonne',
  'de/examples/how-much-rain-margin':
    'Regen Ausfall Gewitter kein Signal Unwetter Verfügbarkeit Regendämpfung',
  'de/examples/what-the-air-takes': 'Atmosphäre Wasserdampf Dämpfung Luft',
  'de/examples/does-the-link-close': 'Streckenbilanz Linkbudget EIRP G/T MER C/N',
  'de/examples/which-reflector':
    'Antenne zu klein Antenne zu klein Schüssel zu klein kleine Antenne zu klein Schüsselgröße Durchmesser Spiegelgröße',
  'de/examples/which-mode-when': 'MODCOD ACM adaptive Modulation',
  'de/examples/do-the-neighbours-disturb': 'Nachbarsatellit Störung',
  'de/examples/levels-at-every-outlet':
    'Kabeldämpfung Koaxkabel Multischalter Verteiler Antennendose Pegel zu niedrig Verstärker',
  'de/examples/what-is-wrong-here':
    'kein Signal Fehlersuche Klötzchen Bild ruckelt schlechter Empfang LNB defekt',
  'de/examples/accept-or-not': 'Messunsicherheit Abnahme Grenzwert Prüfprotokoll',
  'de/examples/which-frequency-do-i-tune':
    'LOF Oszillatorfrequenz LNB-Frequenz ZF Zwischenfrequenz Transponderfrequenz 9750 10600 Universal-LNB unteres oberes Band Lowband Highband 22 kHz Ton 13 Volt 18 Volt Umschaltung Frequenz einstellen Frequenz eingeben falsche LOF invertiertes Spektrum Spiegelfrequenz',
  'de/examples/how-do-several-receivers-share-one-cable':
    'Einkabellösung Einkabelsystem ein Kabel mehrere Receiver mehrere Empfänger SCR Userband Teilnehmerband EN 50494 EN 50607 Kanalstapelung Twin-Receiver ein Kabel Teilnehmer stören sich',
  'de/examples/what-does-the-meter-really-say':
    'MER C/N SNR Es/N0 Eb/N0 Spektrumanalysator RBW Auflösebandbreite Rauschen Marker Kanalleistung Messgerät Signalqualität Prozent BER umrechnen Messwert',
  'de/examples/two-instruments-two-readings':
    'zwei Messgeräte verschieden Messgeräte vergleichen Abweichung Kalibrierung Versatz Offset anderes Messgerät zeigt anders systematischer Fehler welches Messgerät stimmt',
  'de/examples/how-is-a-two-way-terminal-lined-up':
    'VSAT Inbetriebnahme einpegeln Line-up BUC Sendeleistung EIRP Kompression Back-off Sättigung Nebenkeulen S.524 Maske Kreuzpolarisationstest Kontrollzentrum Uplink Sendeanlage',
  'de/examples/how-much-ballast-does-a-flat-roof-need':
    'Ballast Flachdachständer Gehwegplatten Gewicht Flachdach Windlast Sturm Mast schwankt Biegung Kippmoment wie schwer Betonplatten Ständer umgefallen',
  'de/examples/does-a-mobile-mast-disturb':
    '5G LTE Störung Mobilfunk Funkmast Handymast DECT Telefon stört Einstrahlung Schirmung Schirmungsmaß Klasse A Koaxkabel Klötzchen Bild friert ein Filter',
  'de/examples/what-does-circular-polarization-lose':
    'zirkular linksdrehend rechtsdrehend Zirkularpolarisation Achsenverhältnis Depolarisator lineares LNB 3 dB Faraday Ionosphäre C-Band',
  'de/examples/what-did-a-hundred-records-teach':
    'Statistik viele Anlagen Erfahrung Footprint Korrektur Drift nachstellen Stichprobe AQL Stichprobenprüfung ISO 2859 Los Abnahme wie viele prüfen Qualität',
};

/** Words for a page. */
export const wordsFor = (id: string): string =>
  /^(\w\w\/)?examples\//.test(id) ? `${KEYWORDS[id] ?? ''} ${ALL}` : (KEYWORDS[id] ?? '');

/** Weight of a page in the search. */
export const weightOf = (id: string): string =>
  /^(\w\w\/)?examples\//.test(id)
    ? '5'
    : id.startsWith('api/')
      ? '0.3'
      : id.startsWith('validation')
        ? '0.5'
        : '3';
