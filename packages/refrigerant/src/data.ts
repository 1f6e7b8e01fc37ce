import blendFile from '../data/blends.json' with { type: 'json' }
import bell2022Departures from '../data/departures/bell2022.json' with { type: 'json' }
import bell2023Departures from '../data/departures/bell2023.json' with { type: 'json' }
import kunz2012Departures from '../data/departures/kunz2012.json' with { type: 'json' }
import lemmon2004Departures from '../data/departures/lemmon2004.json' with { type: 'json' }
import mclinden2025Departures from '../data/departures/mclinden2025.json' with { type: 'json' }
import r11Jacobsen1992 from '../data/fluids/r-11.jacobsen1992.json' with { type: 'json' }
import r12Marx1992 from '../data/fluids/r-12.marx1992.json' with { type: 'json' }
import r13Platzer1990 from '../data/fluids/r-13.platzer1990.json' with { type: 'json' }
import r13i1Lemmon2016 from '../data/fluids/r-13i1.lemmon2016.json' with { type: 'json' }
import r14Platzer1990 from '../data/fluids/r-14.platzer1990.json' with { type: 'json' }
import r22Kamei1995 from '../data/fluids/r-22.kamei1995.json' with { type: 'json' }
import r23Penoncello2003 from '../data/fluids/r-23.penoncello2003.json' with { type: 'json' }
import r32TillnerRoth1997 from '../data/fluids/r-32.tillner-roth1997.json' with { type: 'json' }
import r41Lemmon2006 from '../data/fluids/r-41.lemmon2006.json' with { type: 'json' }
import r113Marx1992 from '../data/fluids/r-113.marx1992.json' with { type: 'json' }
import r114Platzer1990 from '../data/fluids/r-114.platzer1990.json' with { type: 'json' }
import r115Lemmon2016 from '../data/fluids/r-115.lemmon2016.json' with { type: 'json' }
import r116Lemmon2006 from '../data/fluids/r-116.lemmon2006.json' with { type: 'json' }
import r123Younglove1994 from '../data/fluids/r-123.younglove1994.json' with { type: 'json' }
import r124DeVries1995 from '../data/fluids/r-124.de-vries1995.json' with { type: 'json' }
import r125Lemmon2005 from '../data/fluids/r-125.lemmon2005.json' with { type: 'json' }
import r134aTillnerRoth1994 from '../data/fluids/r-134a.tillner-roth1994.json' with { type: 'json' }
import r142bLemmon2006 from '../data/fluids/r-142b.lemmon2006.json' with { type: 'json' }
import r143aLemmon2000 from '../data/fluids/r-143a.lemmon2000.json' with { type: 'json' }
import r152aOutcalt1996 from '../data/fluids/r-152a.outcalt1996.json' with { type: 'json' }
import r161Wu2012 from '../data/fluids/r-161.wu2012.json' with { type: 'json' }
import r170Buecker2006b from '../data/fluids/r-170.buecker2006b.json' with { type: 'json' }
import r218Lemmon2006 from '../data/fluids/r-218.lemmon2006.json' with { type: 'json' }
import r227eaLemmon2016 from '../data/fluids/r-227ea.lemmon2016.json' with { type: 'json' }
import r236eaRui2013 from '../data/fluids/r-236ea.rui2013.json' with { type: 'json' }
import r236faPan2012 from '../data/fluids/r-236fa.pan2012.json' with { type: 'json' }
import r245faAkasaka2015 from '../data/fluids/r-245fa.akasaka2015.json' with { type: 'json' }
import r290Lemmon2009 from '../data/fluids/r-290.lemmon2009.json' with { type: 'json' }
import r600Buecker2006 from '../data/fluids/r-600.buecker2006.json' with { type: 'json' }
import r600aBuecker2006 from '../data/fluids/r-600a.buecker2006.json' with { type: 'json' }
import r601Thol2019 from '../data/fluids/r-601.thol2019.json' with { type: 'json' }
import r601aLemmon2006 from '../data/fluids/r-601a.lemmon2006.json' with { type: 'json' }
import r717Gao2020 from '../data/fluids/r-717.gao2020.json' with { type: 'json' }
import r744Span1996 from '../data/fluids/r-744.span1996.json' with { type: 'json' }
import r1123Akasaka2020 from '../data/fluids/r-1123.akasaka2020.json' with { type: 'json' }
import r1130EHuber2025 from '../data/fluids/r-1130-e.huber2025.json' with { type: 'json' }
import r1132EAkasaka2024 from '../data/fluids/r-1132-e.akasaka2024.json' with { type: 'json' }
import r1132aAkasaka2026 from '../data/fluids/r-1132a.akasaka2026.json' with { type: 'json' }
import r1224ydZAkasaka2023 from '../data/fluids/r-1224yd-z.akasaka2023.json' with { type: 'json' }
import r1233zdEAkasaka2022 from '../data/fluids/r-1233zd-e.akasaka2022.json' with { type: 'json' }
import r1234yfLemmon2022 from '../data/fluids/r-1234yf.lemmon2022.json' with { type: 'json' }
import r1234zeEThol2016 from '../data/fluids/r-1234ze-e.thol2016.json' with { type: 'json' }
import r1234zeZAkasaka2019 from '../data/fluids/r-1234ze-z.akasaka2019.json' with { type: 'json' }
import r1243zfAkasaka2025 from '../data/fluids/r-1243zf.akasaka2025.json' with { type: 'json' }
import r1270Lemmon2010 from '../data/fluids/r-1270.lemmon2010.json' with { type: 'json' }
import r1336mzzEAkasaka2023b from '../data/fluids/r-1336mzz-e.akasaka2023b.json' with { type: 'json' }
import r1336mzzZMclinden2020 from '../data/fluids/r-1336mzz-z.mclinden2020.json' with { type: 'json' }
import rC318Platzer1990 from '../data/fluids/r-c318.platzer1990.json' with { type: 'json' }
import rE170Wu2011 from '../data/fluids/r-e170.wu2011.json' with { type: 'json' }
import akasaka2014Pairs from '../data/pairs/akasaka2014.json' with { type: 'json' }
import bell2016Pairs from '../data/pairs/bell2016.json' with { type: 'json' }
import bell2020Pairs from '../data/pairs/bell2020.json' with { type: 'json' }
import bell2022Pairs from '../data/pairs/bell2022.json' with { type: 'json' }
import bell2023Pairs from '../data/pairs/bell2023.json' with { type: 'json' }
import bell2025Pairs from '../data/pairs/bell2025.json' with { type: 'json' }
import kunz2012Pairs from '../data/pairs/kunz2012.json' with { type: 'json' }
import lemmon2004Pairs from '../data/pairs/lemmon2004.json' with { type: 'json' }
import mclinden2025Pairs from '../data/pairs/mclinden2025.json' with { type: 'json' }
import type { BlendFile, DepartureFile, FluidFile, PairFile } from './data-file.ts'

/** One file a fluid: its equation of state and where that was published. */
export const fluidFiles: readonly FluidFile[] = [
  r11Jacobsen1992,
  r1123Akasaka2020,
  r113Marx1992,
  r1130EHuber2025,
  r1132EAkasaka2024,
  r1132aAkasaka2026,
  r114Platzer1990,
  r115Lemmon2016,
  r116Lemmon2006,
  r12Marx1992,
  r1224ydZAkasaka2023,
  r123Younglove1994,
  r1233zdEAkasaka2022,
  r1234yfLemmon2022,
  r1234zeEThol2016,
  r1234zeZAkasaka2019,
  r124DeVries1995,
  r1243zfAkasaka2025,
  r125Lemmon2005,
  r1270Lemmon2010,
  r13Platzer1990,
  r1336mzzEAkasaka2023b,
  r1336mzzZMclinden2020,
  r134aTillnerRoth1994,
  r13i1Lemmon2016,
  r14Platzer1990,
  r142bLemmon2006,
  r143aLemmon2000,
  r152aOutcalt1996,
  r161Wu2012,
  r170Buecker2006b,
  r218Lemmon2006,
  r22Kamei1995,
  r227eaLemmon2016,
  r23Penoncello2003,
  r236eaRui2013,
  r236faPan2012,
  r245faAkasaka2015,
  r290Lemmon2009,
  r32TillnerRoth1997,
  r41Lemmon2006,
  r600Buecker2006,
  r600aBuecker2006,
  r601Thol2019,
  r601aLemmon2006,
  r717Gao2020,
  r744Span1996,
  rC318Platzer1990,
  rE170Wu2011,
]

/** Mixing parameters of component pairs, one file a publication. */
export const pairFiles: readonly PairFile[] = [
  akasaka2014Pairs,
  bell2016Pairs,
  bell2020Pairs,
  bell2022Pairs,
  bell2023Pairs,
  bell2025Pairs,
  kunz2012Pairs,
  lemmon2004Pairs,
  mclinden2025Pairs,
] as readonly unknown[] as readonly PairFile[]

/** Departure functions of component pairs, one file a publication. */
export const departureFiles: readonly DepartureFile[] = [
  bell2022Departures,
  bell2023Departures,
  kunz2012Departures,
  lemmon2004Departures,
  mclinden2025Departures,
]

/** Designated blends and their nominal composition. */
export const blends = (blendFile as BlendFile).blends
