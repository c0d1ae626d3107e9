/** What readers of the German pages type, by page, misspelt as people misspell it; ä as ae too where it is often written so. */

export const GERMAN: Readonly<Record<string, string>> = {
  'de/start/one-job':
    'Auftrag Arbeitsauftrag Montagebericht Messprotokoll Abnahmeprotokoll Übergabe Einsatz Kundendienst Checkliste Protokoll drucken Antennenmontage Schritt für Schritt LNB ausrichten Auftrag Messprotokoll',
  'de/examples/where-is-the-satellite':
    'Schüssel ausrichten Antenne ausrichten Azimut Elevation Kompass Spiegel einstellen Satellit suchen Azimuth Azimuth Schuessel Schüssel einstellen Satellitenschüssel ausrichtn Neigungsmesser Offset Elevationswinkel Winkel Himmelsrichtung wohin zeigt die Schüssel Schüssel einstellen Schüssel einstellen Schüssel einstellen Schüssel richtig einstellen',
  'de/examples/how-far-to-turn-the-feed':
    'LNB drehen LNB verdrehen Skew Polarisation Kippwinkel LNB kippen LNB schräg stellen Polarisazion Polarisationswinkel Feed drehen Neigung des LNB',
  'de/examples/can-one-reflector-take-them-all':
    'Multifeed zwei Satelliten eine Schüssel mehrere LNB Monoblock Schiene schielende LNB mehrere Satelliten Multifeedhalter zweites LNB zwei Satelliten eine Schüssel zwei Satelliten zwei LNB mehrere Satelliten mehrere Satelliten',
  'de/examples/typed-coordinates':
    'GPS Koordinaten Grad Minuten Sekunden Koordinaten umrechnen Koordinatenformat UTM MGRS Plus Code GPS',
  'de/examples/north-by-the-sun':
    'Norden finden ohne Kompass Schatten Missweisung Kompass falsch neben Stahl Deklination geographisch magnetisch Norden',
  'de/examples/is-the-view-clear':
    'Baum im Weg Bäume Sichtlinie Hindernis Haus verdeckt freie Sicht Haus im Weg Nachbarhaus Blätter Laub verdeckt zugewachsen Hindernis',
  'de/examples/what-does-a-leaning-mast-do':
    'Mast schief Stativ nicht waagrecht waagerecht Lot Wasserwaage nicht senkrecht',
  'de/examples/how-is-a-polar-mount-set':
    'Drehanlage Motor Rotor motorisiert Drehanlage einstellen Motor einstellen Polarmount Drehmotor',
  'de/examples/half-way-back':
    'Feinausrichtung feinjustieren Maximum einpegeln nachstellen Feineinstellung fein einstellen Spannschloss einpegeln Maximum finden',
  'de/examples/find-the-peak': 'Signalstärke Maximum suchen Messgerät',
  'de/examples/main-lobe-or-side-lobe': 'Nebenkeule Nebenzipfel falsches Maximum',
  'de/examples/both-axes-in-turn': 'Azimut Elevation abwechselnd nachstellen',
  'de/examples/where-is-the-null': 'Kreuzpolarisation Entkopplung XPD Isolation',
  'de/examples/when-to-peak-on-a-moving-satellite':
    'geneigte Umlaufbahn Inklination wandernder Satellit',
  'de/examples/how-far-is-safe':
    'Strahlung Abstand Sicherheitsabstand Strahlenschutz BUC Sender Strahlung gefährlich Abstand vor der Antenne',
  'de/examples/sun-outages':
    'Signal weg mittags Ausfall am Mittag Sonnenstörung Sonne Sonnenstoerung Ausfall im März Oktober Sonne hinter dem Satelliten Tagundnachtgleiche',
  'de/examples/how-much-rain-margin':
    'Regen Ausfall Gewitter kein Signal Unwetter Verfügbarkeit Regendämpfung Bildstörung bei Regen kein Empfang bei Regen Bild weg bei Regen Reserve Schlechtwetterreserve Regendaempfung',
  'de/examples/what-the-air-takes': 'Atmosphäre Wasserdampf Dämpfung Luft',
  'de/examples/does-the-link-close': 'Streckenbilanz Linkbudget EIRP G/T MER C/N',
  'de/examples/which-reflector':
    'Antenne zu klein Antenne zu klein Schüssel zu klein kleine Antenne zu klein Schüsselgröße Durchmesser Spiegelgröße Spiegel grösse Spiegelgrösse Schuessel zu klein welche Schüssel größere',
  'de/examples/which-mode-when': 'MODCOD ACM adaptive Modulation',
  'de/examples/do-the-neighbours-disturb': 'Nachbarsatellit Störung',
  'de/examples/levels-at-every-outlet':
    'Kabeldämpfung Koaxkabel Multischalter Verteiler Antennendose Pegel zu niedrig Verstärker Koax Dämpfung Koaxdämpfung Kabeldaempfung Dämfung Kabel zu lang Multischlater Pegel an der Dose dBµV dBuV Splitter Sat-Verteiler RG6 Leitungslänge',
  'de/examples/what-is-wrong-here':
    'kein Signal Fehlersuche Klötzchen Bild ruckelt schlechter Empfang LNB defekt kein Signal kein Signal kein Empfang kein Empfang schlechter Empfang Bildaussetzer Bildstörung Wasser im Kabel F-Stecker locker Stecker Feuchtigkeit Schnee Störung Fehler suchen ruckelt Ausfall kein Empfang schlechter Empfang Empfang weg Empfang gestört kein Empfang schlechter Empfang Empfangsproblem Empfangsstörung Empfang',
  'de/examples/accept-or-not':
    'Messunsicherheit Abnahme Grenzwert Prüfprotokoll Grenzwert Unsicherheit Abnahmeprüfung Toleranz Abnahmeprotokoll Entscheidungsregel',
  'de/examples/which-frequency-do-i-tune':
    'LOF Oszillatorfrequenz LNB-Frequenz ZF Zwischenfrequenz Transponderfrequenz 9750 10600 Universal-LNB unteres oberes Band Lowband Highband 22 kHz Ton 13 Volt 18 Volt Umschaltung Frequenz einstellen Frequenz eingeben falsche LOF invertiertes Spektrum Spiegelfrequenz',
  'de/examples/how-do-several-receivers-share-one-cable':
    'Einkabellösung Einkabelsystem ein Kabel mehrere Receiver mehrere Empfänger SCR Userband Teilnehmerband EN 50494 EN 50607 Kanalstapelung Twin-Receiver ein Kabel Teilnehmer stören sich',
  'de/examples/what-does-the-meter-really-say':
    'MER C/N SNR Es/N0 Eb/N0 Spektrumanalysator RBW Auflösebandbreite Rauschen Marker Kanalleistung Messgerät Signalqualität Prozent BER umrechnen Messwert MER umrechnen C/N Signalqualität Prozent Rauschteppich Messgerät',
  'de/examples/two-instruments-two-readings':
    'zwei Messgeräte verschieden Messgeräte vergleichen Abweichung Kalibrierung Versatz Offset anderes Messgerät zeigt anders systematischer Fehler welches Messgerät stimmt zwei Messgeräte Messgerät zeigt anders an verschieden',
  'de/examples/how-is-a-two-way-terminal-lined-up':
    'VSAT Inbetriebnahme einpegeln Line-up BUC Sendeleistung EIRP Kompression Back-off Sättigung Nebenkeulen S.524 Maske Kreuzpolarisationstest Kontrollzentrum Uplink Sendeanlage',
  'de/examples/how-much-ballast-does-a-flat-roof-need':
    'Ballast Flachdachständer Gehwegplatten Gewicht Flachdach Windlast Sturm Mast schwankt Biegung Kippmoment wie schwer Betonplatten Ständer umgefallen Mast wackelt wackeln Wind Flachdach Gewicht',
  'de/examples/does-a-mobile-mast-disturb':
    '5G LTE Störung Mobilfunk Funkmast Handymast DECT Telefon stört Einstrahlung Schirmung Schirmungsmaß Klasse A Koaxkabel Klötzchen Bild friert ein Filter',
  'de/examples/what-does-circular-polarization-lose':
    'zirkular linksdrehend rechtsdrehend Zirkularpolarisation Achsenverhältnis Depolarisator lineares LNB 3 dB Faraday Ionosphäre C-Band',
  'de/examples/what-did-a-hundred-records-teach':
    'Statistik viele Anlagen Erfahrung Footprint Korrektur Drift nachstellen Stichprobe AQL Stichprobenprüfung ISO 2859 Los Abnahme wie viele prüfen Qualität',
  'de/examples/does-your-formula-hold':
    'Formel prüfen Formel stimmt nicht Faustformel Formel testen Formel aus dem Lehrbuch Tabellenkalkulation Formel überprüfen',
  'de/start/test-a-formula': 'Formel testen Faustformel prüfen',
  'de/guides/for-trainers':
    'Ausbilder Trainer Lehrer Kurs Bewertung Punkte Folgefehler Prüfung Lernsystem Moodle GIFT QTI',
};
