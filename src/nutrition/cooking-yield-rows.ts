/**
 * USDA Table of Cooking Yields for Meat and Poultry, Release 2 (2014), whole, in words of our own: weight after
 * cooking in percent of the weight before, lowest, highest, number of samples, number of the cooked record in the
 * food table, year, then the cut and how it was cooked. `-` is not given.
 */
export const COOKING_YIELD_ROWS = `
84 77 89 20 13953 2003 beef, bottom sirloin, tri-tip roast, lean and fat, trimmed to 0 in fat, all grades; baked or roasted, time not said
69 65 76 20 13806 2000 beef, brisket, flat half, lean and fat, trimmed to 1/8 in fat, all grades; braised
68.3 60.7 80.4 70 23134 2010 beef, chuck eye country-style ribs, boneless, lean and fat, trimmed to 0 in fat, all grades; braised
80 75.8 93.5 35 23113 2010 beef, chuck eye roast, boneless, lean and fat, trimmed to 0 in fat, all grades; roasted
80.17 61.8 94.9 70 23140 2010 beef, chuck eye steak, boneless, lean and fat, trimmed to 0 in fat, all grades; grilled
71 - - 1 13373 2000 beef, chuck, arm pot roast, lean and fat, trimmed to 1/8 in fat, all grades; braised
71.36 56.4 99.5 61 23119 2010 beef, chuck, mock tender steak, boneless, lean and fat, trimmed to 0 in fat, all grades; braised
66.07 44.9 97.3 30 23125 2010 beef, chuck, short ribs, boneless, lean and fat, trimmed to 0 in fat, all grades; braised
77 74.01 81.1 10 23054 2004 beef, chuck, shoulder clod, shoulder tender, medallion, lean and fat, trimmed to 0 in fat, all grades; broiled or grilled
76 72.75 83.39 10 23058 2004 beef, chuck, shoulder clod, shoulder top and center steaks, lean and fat, trimmed to 0 in fat, all grades; broiled or grilled
76 70.71 79.9 10 23060 2004 beef, chuck, shoulder clod, top blade, steak, lean and fat, trimmed to 0 in fat, all grades; broiled or grilled
71 65.8 83.1 30 23105 2010 beef, chuck, under blade center steak, boneless, lean and fat, trimmed to 0 in fat, all grades; grilled
64 60.9 78.2 33 23099 2010 beef, chuck, under blade pot roast, boneless, lean and fat, trimmed to 0 in fat, all grades; braised
64.96 58.1 72 34 23116 2010 beef, chuck, under blade steak, boneless, lean and fat, trimmed to 0 in fat, all grades; braised
81 74 89 20 13948 2003 beef, flank, lean and fat, trimmed to 0 in fat, all grades; broiled or grilled
62 60.31 63.89 4 13494 2003 beef, ground, high fat (>22%), crumbles; pan-fried
63 61.94 63.89 4 13495 2003 beef, ground, high fat (>22%), loaf; baked or roasted, time not said
69 67.55 72.23 4 13496 2003 beef, ground, high fat (>22%), patty; pan-broiled
63 55.33 69.44 4 13497 2003 beef, ground, high fat (>22%), patty; broiled or grilled
69 67.08 69.53 4 23565 2002 beef, ground, low fat (<12%), crumbles; pan-fried
72 67.59 73.93 4 23566 2002 beef, ground, low fat (<12%), loaf; baked or roasted, time not said
73 72.82 74.68 4 23563 2002 beef, ground, low fat (<12%), patty; broiled or grilled
77 76.37 78.3 4 23564 2002 beef, ground, low fat (<12%), patty; pan-broiled
67 63.7 71.62 4 23575 2002 beef, ground, medium fat (12%-22%), crumbles; pan-fried
70 65.08 76.25 4 23576 2002 beef, ground, medium fat (12%-22%), loaf; baked or roasted, time not said
69 63.96 72.42 4 23573 2002 beef, ground, medium fat (12%-22%), patty; broiled or grilled
73 70.78 75.97 4 23574 2002 beef, ground, medium fat (12%-22%), patty; pan-broiled
82 - - 1 23345 2013 beef, loin, tenderloin roast, boneless, lean and fat, trimmed to 0 in fat, all grades; roasted
79 - - 1 13439 2013 beef, loin, tenderloin steak, lean and fat, trimmed to 0 in fat, all grades; grilled
82 - - 1 13445 2013 beef, loin, top loin steak, boneless, lip off, lean and fat, trimmed to 0 in fat, all grades; grilled
72.9 64.3 84.9 72 23214 2011 beef, plate steak, boneless, inside skirt, lean and fat, trimmed to 0 in fat, all grades; grilled
68.2 58.6 79.3 72 23221 2011 beef, plate steak, boneless, outside skirt, lean and fat, trimmed to 0 in fat, all grades; grilled
78 68.6 87.98 458 - 2011 beef, retail all cuts, all temps; broiled or grilled
73 53 87 36 - 2011 beef, retail cuts, all, bone in; braised
67 55.74 84.17 361 - 2011 beef, retail cuts, all, boneless; braised
77 72 84 35 - 2011 beef, retail cuts, bone in, all temps; baked or roasted, time not said
79 64 96 71 - 2011 beef, retail cuts, boneless, all temps; baked or roasted, time not said
66 44.9 97.3 30 - 2011 beef, retail cuts, boneless, short ribs; braised
76 66.54 87.57 553 - 2011 beef, retail cuts, steaks, bone in and boneless; multiple cooking methods
76.9 71.8 83.5 35 23191 2011 beef, rib eye roast, bone-in, lip-on, lean and fat, trimmed to 1/8 in fat, all grades; roasted
75.8 65.7 84.9 36 23198 2011 beef, rib eye roast, boneless, lip-on, lean and fat, trimmed to 1/8 in fat, all grades; roasted
85.7 77.7 90.3 36 23188 2011 beef, rib eye steak, bone-in, lip-on, lean and fat, trimmed to 1/8 in fat, all grades; grilled
82.2 75.2 88.6 36 23227 2011 beef, rib eye steak, boneless, lip off, lean and fat, trimmed to 0 in fat, all grades; grilled
83.6 74.6 91.9 36 23197 2011 beef, rib eye steak, boneless, lip-on, lean and fat, trimmed to 1/8 in fat, all grades; grilled
75.3 65.2 82.2 36 23233 2011 beef, rib, back ribs, bone-in, lean and fat, trimmed to 0 in fat, all grades; braised
82 70 85 20 13851 2000 beef, rib, small end (ribs 10-12), lean and fat, trimmed to 1/8 in fat, all grades; broiled or grilled
85 76 87 20 13421 2000 beef, round tip round roast, lean and fat, trimmed to 0 in fat, all grades; baked or roasted, time not said
84 76 88 20 13870 2000 beef, round, bottom round, roast, lean and fat, trimmed to 1/8 in fat, all grades; baked or roasted, time not said
69 62 70 20 13869 2000 beef, round, bottom round, steak, lean and fat, trimmed to 1/8 in fat, all grades; braised
81 75 83 20 13878 2000 beef, round, eye of round, roast, lean and fat, trimmed to 1/8 in fat, all grades; baked or roasted, time not said
76 70.86 81 13 23062 2004 beef, round, knuckle, tip center, steak, lean and fat, trimmed to 0 in fat, all grades; broiled or grilled
75 71.42 78.59 7 23056 2004 beef, round, knuckle, tip side, steak, lean and fat, trimmed to 0 in fat, all grades; broiled or grilled
77 74.49 81.65 10 23064 2004 beef, round, outside round, bottom round, steak, lean and fat, trimmed to 0 in fat, all grades; broiled or grilled
72 62 83 20 13893 2000 beef, round, top round steak, lean and fat, trimmed to 1/8 in fat, all grades; broiled or grilled
82 - - 1 13910 2013 beef, short loin, top loin, steak, lean and fat, trimmed to 1/8 in fat, all grades; broiled or grilled
66.28 54.6 80.9 71 23131 2010 beef, shoulder pot roast, boneless, lean and fat, trimmed to 0 in fat, all grades; braised
77.72 69.8 88.9 72 23554 2010 beef, shoulder steak, boneless, lean and fat, trimmed to 0 in fat, all grades; grilled
73 69 89.9 34 13598 2010 beef, shoulder top blade steak, boneless, lean and fat, trimmed to 0 in fat, all grades; grilled
80 71 86 19 13918 2000 beef, tenderloin, steak, lean and fat, trimmed to 1/8 in fat, all grades; broiled or grilled
80 69 87 20 13930 2000 beef, top sirloin, steak, lean and fat, trimmed to 1/8 in fat, all grades; broiled or grilled
85 - - 1 13320 2003 beef, variety meats and by-products, brain; poached, simmered or stewed
57 - - 1 13322 2003 beef, variety meats and by-products, heart; poached, simmered or stewed
53 - - 1 13324 2003 beef, variety meats and by-products, kidneys; poached, simmered or stewed
68 - - 1 13326 2003 beef, variety meats and by-products, liver; braised
73 - - 1 13327 2003 beef, variety meats and by-products, liver; pan-fried or sautéed
70 - - 1 23640 2003 beef, variety meats and by-products, tripe; poached, simmered or stewed
61 49 71 - 05051 1975 chicken, broiler-fryer, back, full, meat and skin; baked or roasted, time not said
67 58 79 - 05052 1975 chicken, broiler-fryer, back, full, meat and skin; poached, simmered or stewed
72 61 82 - 05060 1975 chicken, broiler-fryer, breast, meat and skin; baked or roasted, time not said
77 70 88 - 05061 1975 chicken, broiler-fryer, breast, meat and skin; poached, simmered or stewed
76 63 87 - 05069 1975 chicken, broiler-fryer, drumstick, meat and skin; baked or roasted, time not said
70 62 81 - 05087 1975 chicken, broiler-fryer, neck, meat and skin; poached, simmered or stewed
69 58 79 - 05094 1975 chicken, broiler-fryer, thigh, meat and skin; baked or roasted, time not said
74 67 82 - 05095 1975 chicken, broiler-fryer, thigh, meat and skin; poached, simmered or stewed
78 68 84 - 05004 1975 chicken, broiler-fryer, whole, including skin; baked or roasted, time said
75 69 87 - 05010 1975 chicken, broiler-fryer, whole, including skin; poached, simmered or stewed
86 74 96 - 05104 1975 chicken, broiler-fryer, wing, meat and skin; poached, simmered or stewed
66 53 78 - 05102 1975 chicken, broiler-fryer, wing, meat and skin, floured; fried in deep fat
77 - - 1 05676 2011 chicken, broilers or fryers, drumstick, meat and skin; braised
68 - - 1 05677 2011 chicken, broilers or fryers, thigh, meat and skin; braised
78 - - 1 05103 2013 chicken, broilers or fryers, wing, meat and skin; roasted
74 - - 1 05687 2013 chicken, drumstick, meat and skin, enhanced; braised
80 - - 1 05689 2013 chicken, dark meat, drumstick, meat and skin, enhanced; roasted
72 - - 1 05690 2013 chicken, thigh, meat and skin, enhanced; braised
67 - - 1 05692 2013 chicken, thigh, meat and skin, enhanced; roasted
55 - - 1 05024 2003 chicken, gizzard, all classes; poached, simmered or stewed
62 61.14 63.83 4 05661 2003 chicken, liver, all classes; pan-fried or sautéed
80 70.79 85.67 6 05622 2001 emu, ground; broiled or grilled
77 75.56 78.86 6 17331 2001 game meat, bison, ground; broiled or grilled
83 81.22 84.87 3 17344 2001 game meat, deer, ground; broiled or grilled
84 80.05 88.91 5 17339 2001 game meat, elk, ground; broiled or grilled
74 53 88 - - 1975 lamb, retail cuts, roasts, all samples; baked or roasted, time not said
60 54 72 - - 1975 lamb, retail cuts, shoulder, shank, breast, flank; braised
60 54 72 - - 1975 lamb, retail cuts, shoulder, shank, breast, flank; poached, simmered or stewed
86 81 88 6 05642 2001 ostrich, ground; broiled or grilled
82 74 90 12 10193 2011 pork loin, fresh, backribs, bone-in, lean and fat; baked or roasted, time not said
80 - - 1 07064 2012 pork sausage, fresh; pan-fried
32 30.53 32.57 3 10860 2003 pork, cured, bacon; baked or roasted, time not said
29 28.89 30.13 3 10861 2003 pork, cured, bacon; microwaved
32 - - 1 10862 2012 pork, cured, bacon; pan-fried
87 79.93 91.81 5 10865 2009 pork, cured, ham, water added, rump, bone-in; baked or roasted, time not said
85 79.95 89.74 5 10877 2009 pork, cured, ham and water product, rump, bone-in; baked or roasted, time not said
82 73.51 91.98 6 10881 2009 pork, cured, ham and water product, shank, bone-in; baked or roasted, time not said
81 75.89 86.73 5 10869 2009 pork, cured, ham and water product, slice, bone-in; pan-broiled
96 92.73 97.98 4 10871 2009 pork, cured, ham and water product, whole, boneless; baked or roasted, time not said
87 81.11 96.81 7 10873 2009 pork, cured, ham with natural juices, rump, bone-in; baked or roasted, time not said
93 88.43 98.26 7 10874 2009 pork, cured, ham with natural juices, shank, bone-in; baked or roasted, time not said
86 85.78 86.36 2 10875 2009 pork, cured, ham with natural juices, slice, bone-in; pan-broiled
87 78.65 93 3 10876 2009 pork, cured, ham with natural juices, spiral slice; baked or roasted, time not said
94 91.22 95.54 9 10883 2009 pork, cured, ham with natural juices, whole, boneless; baked or roasted, time not said
90 88.85 91.39 3 10931 2009 pork, cured, ham, rump, bone-in; baked or roasted, time not said
92 90.25 93.35 3 10933 2009 pork, cured, ham, shank, bone-in; baked or roasted, time not said
86 83.13 88.15 3 10899 2009 pork, cured, ham, slice, bone-in; pan-broiled
86 75.81 92.68 6 10867 2009 pork, cured, ham, water added, shank, bone-in; baked or roasted, time not said
80 76.21 90.93 7 10868 2009 pork, cured, ham, water added, slice, bone-in; pan-broiled
94 83.12 97.84 10 10879 2009 pork, cured, ham, water added, whole, boneless; baked or roasted, time not said
85 78 90 12 10988 2011 pork, fresh, blade, (chops), boneless, lean and fat; broiled or grilled
82 - - 1 10950 2014 pork, fresh, enhanced, loin, top loin (chops), boneless, lean and fat; broiled
77 70 80 12 10013 2011 pork, fresh, leg (ham), rump half, lean and fat; baked or roasted, time not said
79 68.5 82 12 10017 2011 pork, fresh, leg (ham), shank half, lean and fat; baked or roasted, time not said
79 72.09 82.12 4 10962 2009 pork, fresh, leg sirloin tip roast, boneless, lean and fat; braised
78 65 93 12 10029 2011 pork, fresh, loin, blade (chops), bone-in, lean and fat; braised
83 78 90 12 10030 2011 pork, fresh, loin, blade (chops), bone-in, lean and fat; broiled or grilled
82 68 97 12 10178 2011 pork, fresh, loin, blade (chops), bone-in, lean and fat; pan-fried
77 68 88 12 10031 2011 pork, fresh, loin, blade (roasts), bone-in, lean and fat; baked or roasted, time not said
75 68 88 12 10990 2011 pork, fresh, loin, blade (roasts), boneless, lean and fat; baked or roasted, time not said
74 67 85 12 10037 2011 pork, fresh, loin, center loin (chops), bone-in, lean and fat; braised
76 58 84 12 10179 2011 pork, fresh, loin, center loin (chops), bone-in, lean and fat; pan-fried
80 - - 1 10189 2014 pork, fresh, loin, center loin (chops), boneless, lean and fat; pan broiled
77 63 88 12 10039 2011 pork, fresh, loin, center loin (roasts), bone-in, lean and fat; baked or roasted, time not said
77 68 89 12 10045 2011 pork, fresh, loin, center rib (chops), bone-in, lean and fat; braised
77 68 87 12 10180 2011 pork, fresh, loin, center rib (chops), bone-in, lean and fat; pan-fried
75 65 84 12 10047 2011 pork, fresh, loin, center rib (roasts), bone-in, lean and fat; baked or roasted, time not said
81 - - 1 10956 2009 pork, fresh, loin, leg cap steak, boneless, lean and fat; broiled or grilled
73 68 79 12 10053 2011 pork, fresh, loin, sirloin (chops), bone-in, lean and fat; braised
76 61 87 12 10211 2011 pork, fresh, loin, sirloin (chops), boneless, lean and fat; braised
79 73 94 12 10212 2011 pork, fresh, loin, sirloin (chops), boneless, lean and fat; broiled or grilled
80 - - 1 10218 2009 pork, fresh, loin, tenderloin, lean and fat; roasted
77 74 84 12 10061 2009 pork, fresh, loin, tenderloin, lean only; baked or roasted, time not said
73 62 84 12 10063 2011 pork, fresh, loin, top loin (chops), boneless, lean and fat; braised
77 60 85 12 10186 2011 pork, fresh, loin, top loin (chops), boneless, lean and fat; pan-fried
80 - - 1 10959 2009 pork, fresh, shoulder breast, boneless, lean and fat; broiled or grilled
74 70 78 12 10075 2011 pork, fresh, shoulder, arm picnic, lean and fat; braised
82 - - 1 10960 2009 pork, fresh, shoulder, petite tender, boneless, lean and fat; broiled or grilled
76 68 79 12 10940 2009 pork, fresh, spareribs, lean and fat; baked or roasted, time not said
39 - - 1 10099 2009 pork, fresh, variety meats and by-products, chitterlings; poached, simmered or stewed
36 - - 1 10173 2003 pork, fresh, variety meats and by-products, feet; poached, simmered or stewed
69 - - 1 10863 2003 pork, fresh, variety meats and by-products, stomach; poached, simmered or stewed
66 56 81 4 10974 2009 pork, ground, crumbles, high fat (>27%); pan-browned
68 61 74 4 10976 2009 pork, ground, crumbles, low fat (<10%); pan-browned
67 62 75 4 10975 2009 pork, ground, crumbles, medium fat (10%-27%); pan-browned
69 65 72 4 10977 2009 pork, ground, patty, high fat (>27%); broiled or grilled
68 64 70 4 10979 2009 pork, ground, patty, low fat (<10%); broiled or grilled
68 66 69 4 10978 2009 pork, ground, patty, medium fat (10%-27%); broiled or grilled
77 - - 1 07958 2002 turkey sausage, fresh; broiled or grilled
76 - - 1 05745 2013 turkey, from whole, enhanced, back, meat and skin; roasted
74 - - 1 05701 2013 turkey, from whole, enhanced, dark meat, meat and skin; roasted
69 - - 1 05184 2013 turkey, from whole, non-enhanced, dark meat, meat and skin; roasted
64 62 66 1 05172 1975 turkey, all, giblets; poached, simmered or stewed
85 - - 1 05174 2003 turkey, gizzard, all classes; poached, simmered or stewed
76 - - 1 05176 2003 turkey, heart, all classes; poached, simmered or stewed
83 - - 1 05178 2003 turkey, liver, all classes; poached, simmered or stewed
68 - - 1 05731 2013 turkey, retail parts, enhanced, breast, meat and skin; roasted
72 - - 1 05733 2013 turkey, retail parts, non-enhanced, breast, meat and skin; roasted
72 - - 1 05737 2013 turkey, retail parts, non-enhanced, drumstick, meat and skin; roasted
83 - - 1 05743 2013 turkey, retail parts, non-enhanced, thigh, meat and skin; roasted
71 - - 1 05735 2013 turkey, retail parts, non-enhanced, wing, meat and skin; roasted
71 - - 1 05707 2013 turkey, whole, enhanced, meat and skin; roasted
71 - - 1 05166 2013 turkey, whole, non-enhanced, meat and skin; roasted
74 66.51 82.73 6 17425 2014 veal, leg, top round, cap off, cutlet, boneless; grilled
77 - - 1 17438 2014 veal, shoulder, blade chop, lean and fat; grilled
69 - - 1 17203 2003 veal, variety meats and by-products, liver; braised
68 67.5 67.64 2 17204 2003 veal, variety meats and by-products, liver; pan-fried or sautéed
`;
