/** NMEA 0183 sentences as published, and where. */
export const published: readonly { readonly text: string; readonly from: string }[] = [
  ...[
    '$GPGGA,123519,4807.038,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,*47',
    '$GPRMC,123519,A,4807.038,N,01131.000,E,022.4,084.4,230394,003.1,W*6A',
    '$GPGSA,A,3,04,05,,09,12,,,24,,,,,2.5,1.3,2.1*39',
    '$GPGSV,2,1,08,01,40,083,46,02,17,308,41,12,07,344,39,14,22,228,45*75',
    '$GPVTG,054.7,T,034.4,M,005.5,N,010.2,K*48',
    '$GPGLL,4916.45,N,12311.12,W,225444,A*31',
  ].map((text) => ({ text, from: 'NMEA tutorial, gpsinformation.org/dale/nmea.htm' })),
  // The tutorial's other form of the sentence, with a trailing comma; from memory.
  { text: '$GPGLL,4916.45,N,12311.12,W,225444,A,*1D', from: 'NMEA tutorial, from memory' },
  ...[
    '$GPHDT,74.20,T*34',
    '$GPZDA,195959.00,14,01,2020,00,00*6A',
    '$GPRMC,195959.00,A,1541.31258893,N,05130.51204125,W,0.26,147.44,140120,16.9,W,D*0B',
    '$GPGST,195959.00,0.30,0.36,0.26,283.74,0.26,0.36,0.68*68',
  ].map((text) => ({ text, from: 'NOAA PSL, ATOMIC 2020 cruise, gps02001420_raw.txt' })),
  {
    text: '$GPGGA,015808.00,2726.53758,S,15126.05255,E,1,08,1.0,365.1,M,39.5,M,,*79',
    from: 'R package em38, nmea_check manual page',
  },
];

/** Printed by the same manual page as a sentence that fails its check: `GA,01` is missing from the one above. */
export const publishedDamaged = '$GPG5808.00,2726.53758,S,15126.05255,E,1,08,1.0,365.1,M,39.5,M,,*79';
