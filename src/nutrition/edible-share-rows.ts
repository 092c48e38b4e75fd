/**
 * What is thrown away of raw foods of the everyday table, as the release's file of descriptions says: number of the
 * record, percent of the weight as bought, and what it is. USDA SR28, FOOD_DES, fields Refuse and Ref_desc, unchanged.
 * A raw food without a row has no refuse there: it is eaten whole.
 */
export const EDIBLE_SHARE_ROWS = `
01123 12 Shell
02044 36 Tough stems, flower heads and trimmings
02065 59 Stems
09003 10 Core and stem
09021 7 Pits
09037 26 Seed and skin
09040 36 Skin
09042 4 Caps and spoiled berries
09050 5 Stems and green or spoiled berries
09059 22 9% core, 13% skin
09060 3 Seeds and stem end
09062 31 Seeds, skin and core
09070 8 Pits and stems
09078 2 Stems and spoiled berries
09089 1 Stems
09111 50 Peel, seeds, core, and membrane
09132 4 Stems
09139 22 Skin
09144 72 Seeds and skin
09148 24 Skin
09150 47 45% peel, 2% seeds
09164 40 Shell and seeds
09172 47 Shell and seeds
09176 29 Seeds and skin
09181 49 9% cavity contents, 1% cutting loss, 39% rind
09184 54 5% cavity contents, rind 49%
09191 9 Pit
09200 27 Peel and seeds
09218 26 Peel and seeds
09226 38 Seeds and skin
09231 48 Shell
09236 4 Pit
09252 10 Stem, core and seeds
09263 16 2% calyx, 14% skin
09266 49 8% core, 16% crown, 26% parings
09277 35 Skin and stems
09279 6 Pits
09286 44 Skin and membrane
09287 25 Seeds, skin, and bud end
09295 44 Seeds, skin, and membrane
09302 4 Caps, stems, and spoiled berries
09307 25 19% ends, 6% leaves
09314 31 Seeds and skin
09315 33 Seeds and skin
09316 6 Caps and stems
09321 45 Seeds and skin
09322 66 Pods and seeds
09326 48 Rind, seeds, and cutting loss
09340 9 Core and stem
11003 6 Tough stems
11011 47 Butt ends
11024 17 Tough stems and leaves
11052 12 Ends, strings, trimmings
11080 33 Parings and part tops
11086 44 Stems, bruised and old leaves
11088 3 Ends
11090 39 Leaves and tough stalks with trimmings
11098 10 Outer leaves
11104 25 Skin, root and tips
11109 20 Outer leaves and core
11112 20 Outer leaves and core
11116 12 Base and damaged leaves
11119 7 Outer leaves and root base
11124 11 Crown, tops and scrapings
11134 16 Skin
11135 61 Leaf stalks, cores and trimmings
11141 14 Parings
11143 11 Roots and trimmings
11147 8 Tough stems and damaged leaves
11149 1 End and stem
11161 43 Stems
11165 15 Roots, old and bruised leaves
11167 64 35% husk, silk, trimmings; 29% cob
11191 49 Pods
11199 5 Ends
11205 3 Ends
11206 27 Parings, ends and bruised spots
11209 19 Ends, parings and trimmings
11215 13 Knob and skin
11216 7 Scrapings
11218 30 Ends, skin, and seeds
11220 27 Ribs, skin, stem and blossom end
11222 38 Stems
11231 38 Tough leaves and stems
11233 28 Stem ends, tough stems and tough midrib parts
11241 54 Leaves, stems and parings
11246 56 Tops, root end and skin
11250 26 Outer leaves and core
11251 6 Core
11252 5 Core
11253 36 Outer leaves, core and trimmings
11254 21 Skins and ends of lobes
11260 3 Trimmings
11270 7 Bases
11278 14 Crown and tips
11282 10 Stem ends, sprouts and defects
11291 4 Rootlets
11297 5 Tough stems
11298 15 Parings
11300 6 Ends and strings
11304 62 Pods and inedible peas
11333 18 Stem ends, seeds and core
11344 52 Pods
11352 25 Parings and trimmings
11416 65 Pistil and calyx
11422 30 Seeds, rind and stem
11427 24 Tough stems and leaves
11429 10 Stem ends, rootlets and trimmings
11430 21 Tops and parings
11435 15 Parings
11457 28 Large stems and roots
11467 1 Ends
11477 5 Ends
11485 16 Seeds, rind and trimmings
11503 23 Tough stems
11507 28 Parings and trimmings
11518 14 Ends and skin
11529 9 Core and stem ends
11564 19 Parings
11568 30 Root crown, tough stems and discarded leaves
11591 8 Tough stems and ends
11593 29 Stem, center and skin
11601 14 Skin
11603 8 Ends and skin
11620 48 Hard outer covering and fibers
11670 27 Stem ends, seeds and core
11677 12 Skins
11819 27 Stem ends, seeds and core
11821 18 Stem ends, seed and core
11957 28 Stalk, leaves and core
11959 40 Roots, stems and yellowed leaves
11963 4 Spines and dark spots
11972 35 Tough stem
11974 5 Tough stems
11977 3 Stems
11979 8 Stems and seeds
11991 14 Peel
12104 48 Shells (brown), skin, water
`;
