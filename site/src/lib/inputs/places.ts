/** Invented stations of the demo, offered by every place input. */

import type { Place } from './inputs.js';

/** Name and place of each preset. */
export const PRESETS: readonly (Place & { readonly name: string })[] = [
  { name: 'Tarnfell, Karhut', latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 },
  { name: 'Tarnfell, Lower Seat', latitudeDeg: 46.2, longitudeDeg: 9.3, heightM: 1420 },
  { name: 'Tarnfell, Moss Gate', latitudeDeg: 46.8, longitudeDeg: 10.1, heightM: 2310 },
  { name: 'Riverine clinics, Long Bend', latitudeDeg: -0.4, longitudeDeg: 102, heightM: 35 },
  { name: 'Station School, Redgum', latitudeDeg: -29.6, longitudeDeg: 141.2, heightM: 120 },
];
