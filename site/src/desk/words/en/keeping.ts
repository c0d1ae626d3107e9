/** Jobs on the device, and files that come and go. */

import { plural } from './plural.js';

export const keeping = {
  desk: {
    job: 'Job',
    newJob: 'New job',
    newFrom: 'Begin with',
    empty: 'an empty job',
    begin: 'Begin',
    cancel: 'Cancel',
    undo: 'Undo',
    remove: 'Remove',
    open: 'Open a job file',
    untitled: 'Job without a title',
    firstTitle: 'New job',
    copy: (title: string) => `${title} (copy)`,
    fromOtherTab: (title: string) => `${title} (kept from the other tab)`,
    removed: (title: string) => `${title} is removed. Undo brings it back.`,
    removedDamaged: 'The damaged job is removed.',
  },
  kept: {
    opened: 'Opened from this device. Nothing is sent anywhere.',
    first: 'Kept on this device only. Nothing is sent anywhere.',
    kept: (time: string) => `Kept on this device at ${time}. Nothing is sent anywhere.`,
    keeping: 'Keeping …',
    refused:
      'Not kept: this browser does not let the page store anything. Save the job file before you leave.',
    full: 'Not kept: this device has no room left. Save the job file, then remove a job that is not needed.',
    failed:
      'Not kept: the device could not write. The job stands in this tab; save the job file before you leave.',
    otherTab: 'This job was changed in another tab; here is what it is now.',
    clash:
      'This job was changed in another tab at the same time. Both are kept: yours goes on here under a name of its own.',
    gone: 'This job was removed in another tab. What stands here is kept as a job of its own.',
    damaged: (count: number) =>
      `${plural(count, 'stored job is', 'stored jobs are')} damaged and cannot be shown. Nothing was deleted; the others are untouched.`,
    saveDamaged: 'Save what is left of it',
    removeDamaged: 'Remove it',
    undone: 'One step back.',
    nothingToUndo: 'There is nothing to take back.',
  },
  taken: {
    job: (title: string) => `${title} was opened as a job of its own.`,
    record: (title: string) =>
      `${title}: the job of this record was opened; its results are computed anew.`,
    tooLarge: (megabytes: string) =>
      `This file has ${megabytes} MB. A job file has at most 5 MB; nothing was changed.`,
    notJson:
      'This is not a job file: it cannot be read as JSON. Nothing was changed. A job file ends in .json and begins with "format": "slantpath-job".',
    other:
      'This is another kind of file: it does not say "format": "slantpath-job". Nothing was changed.',
    faults: (lines: string) =>
      `This job file has faults, so it was not opened and nothing was changed: ${lines}`,
    unreadable: 'The file could not be read from the device. Nothing was changed.',
    badLink: 'This link holds no job that can be read: it may have been cut on the way.',
    link: (title: string) => `The job of this link was opened as a job of its own: ${title}.`,
  },
};
