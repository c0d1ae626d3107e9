import { polarizationSkew } from 'slantpath/pointing';
import { cell, referenceTable } from '../support/csv.js';
import { publishedTable } from '../support/published.js';

publishedTable({
  part: 'pointing',
  quantity: 'polarization skew',
  unit: 'deg',
  source: 'WGS 84 vectors recomputed with two general-purpose geodesy libraries',
  status: 'recomputed',
  limit: 5e-6,
  reason: 'last printed digit',
  count: 19,
  cases: () =>
    referenceTable('pointing/look-angles-wgs84.csv')
      .filter((row) => cell(row, 'elevation_geometric_deg') < 90)
      .map((row) => {
        const skew = polarizationSkew({
          station: {
            latitudeDeg: cell(row, 'lat_deg'),
            longitudeDeg: cell(row, 'lon_deg_east'),
            heightM: cell(row, 'height_m'),
          },
          orbitalLongitudeDeg: cell(row, 'sat_lon_deg_east'),
        });
        return {
          name: `${row['lat_deg']} ${row['lon_deg_east']} to ${row['sat_lon_deg_east']}`,
          expected: cell(row, 'skew_exact_deg_clockwise_seen_from_behind_dish'),
          got: skew.kind === 'visible' ? skew.skewDeg : Number.NaN,
        };
      }),
});
