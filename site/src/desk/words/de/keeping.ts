/** Jobs on the device, and files that come and go, in German. */

export const keeping = {
  desk: {
    job: 'Auftrag',
    newJob: 'Neuer Auftrag',
    newFrom: 'Beginnen mit',
    empty: 'einem leeren Auftrag',
    begin: 'Beginnen',
    cancel: 'Abbrechen',
    undo: 'Rückgängig',
    remove: 'Entfernen',
    open: 'Auftragsdatei öffnen',
    untitled: 'Auftrag ohne Titel',
    firstTitle: 'Neuer Auftrag',
    copy: (title: string) => `${title} (Kopie)`,
    fromOtherTab: (title: string) => `${title} (aus dem anderen Tab)`,
    removed: (title: string) => `${title} ist entfernt. „Rückgängig“ bringt ihn zurück.`,
    removedDamaged: 'Der beschädigte Auftrag ist entfernt.',
  },
  kept: {
    opened: 'Von diesem Gerät geöffnet. Nichts wird irgendwohin gesendet.',
    first: 'Bleibt nur auf diesem Gerät. Nichts wird irgendwohin gesendet.',
    kept: (time: string) =>
      `Um ${time} auf diesem Gerät gesichert. Nichts wird irgendwohin gesendet.`,
    keeping: 'Wird gesichert …',
    refused:
      'Nicht gesichert: Dieser Browser lässt die Seite nichts aufbewahren. Vor dem Verlassen die Auftragsdatei speichern.',
    full: 'Nicht gesichert: Auf diesem Gerät ist kein Platz mehr. Die Auftragsdatei speichern, dann einen Auftrag entfernen, der nicht mehr gebraucht wird.',
    failed:
      'Nicht gesichert: Das Gerät konnte nicht schreiben. Der Auftrag steht in diesem Tab; vor dem Verlassen die Auftragsdatei speichern.',
    otherTab: 'Dieser Auftrag wurde in einem anderen Tab geändert; so steht er jetzt.',
    clash:
      'Dieser Auftrag wurde gleichzeitig in einem anderen Tab geändert. Beide sind gesichert: dieser geht hier unter eigenem Namen weiter.',
    gone: 'Dieser Auftrag wurde in einem anderen Tab entfernt. Was hier steht, ist als eigener Auftrag gesichert.',
    damaged: (count: number) =>
      `${count === 1 ? 'Ein gesicherter Auftrag ist' : `${count} gesicherte Aufträge sind`} beschädigt und nicht zu zeigen. Nichts wurde gelöscht; die anderen sind unberührt.`,
    saveDamaged: 'Speichern, was davon übrig ist',
    removeDamaged: 'Entfernen',
    undone: 'Ein Schritt zurück.',
    nothingToUndo: 'Es gibt nichts zurückzunehmen.',
  },
  taken: {
    job: (title: string) => `${title} ist als eigener Auftrag geöffnet.`,
    record: (title: string) =>
      `${title}: Der Auftrag dieses Protokolls ist geöffnet; seine Ergebnisse werden neu berechnet.`,
    tooLarge: (megabytes: string) =>
      `Diese Datei hat ${megabytes} MB. Eine Auftragsdatei hat höchstens 5 MB; nichts wurde geändert.`,
    notJson:
      'Das ist keine Auftragsdatei: Sie ist nicht als JSON lesbar. Nichts wurde geändert. Eine Auftragsdatei endet auf .json und beginnt mit "format": "slantpath-job".',
    other:
      'Das ist eine Datei anderer Art: In ihr steht nicht "format": "slantpath-job". Nichts wurde geändert.',
    faults: (lines: string) =>
      `Diese Auftragsdatei hat Fehler; sie wurde nicht geöffnet und nichts geändert: ${lines}`,
    unreadable: 'Die Datei ließ sich nicht vom Gerät lesen. Nichts wurde geändert.',
    badLink:
      'In diesem Link steht kein lesbarer Auftrag: vielleicht wurde er unterwegs abgeschnitten.',
    link: (title: string) => `Der Auftrag dieses Links ist als eigener Auftrag geöffnet: ${title}.`,
  },
};
