import type { ImportFile } from '../../../src/records/import/index.js';

// A small extract in the shape of the CSV downloads of USDA FoodData Central, with the columns and the
// quotation marks that those files have. All foods and all values are invented.
export const EXTRACT: Readonly<Record<ImportFile, string>> = {
  'nutrient.csv': `"id","name","unit_name","nutrient_nbr","rank"
"1008","Energy","KCAL","208","300.0"
"2047","Energy (Atwater General Factors)","KCAL","957","280.0"
"2048","Energy (Atwater Specific Factors)","KCAL","958","290.0"
"1062","Energy","kJ","268","400.0"
"1003","Protein","G","203","600.0"
"1005","Carbohydrate, by difference","G","205","1110.0"
"1093","Sodium, Na","MG","307","5800.0"
"1114","Vitamin D (D2 + D3)","UG","328","8700.0"
"1057","Caffeine","MG","262","18300.0"
`,
  'measure_unit.csv': `"id","name"
"1000","cup"
"1001","tablespoon"
"9999","undetermined"
`,
  'food.csv': `"fdc_id","data_type","description","food_category_id","publication_date"
"900001","foundation_food","Moonbeans, ""silver"", raw","16","2024-10-31"
"900002","sr_legacy_food","Moonbeans, cooked,
  in two lines","16","2019-04-01"
"900003","survey_fndds_food","Moonbean soup","9002","2022-10-28"
"900004","branded_food","Moonbean crisps","","2021-01-01"
"900005","sub_sample_food","Moonbeans, sample 7","16","2024-10-31"
"900006","foundation_food","Moonbeans, nothing measured","16","2024-10-31"
`,
  'food_nutrient.csv': `"id","fdc_id","nutrient_id","amount","data_points","derivation_id","min","max","median","footnote","min_year_acquired"
"1","900001","2047","341.5","","49","","","","",""
"2","900001","2048","330.25","","49","","","","",""
"3","900001","1003","21.6","8","1","20.1","22.0","","",""
"4","900001","1093","0","1","1","","","","",""
"5","900001","1057","3","1","1","","","","",""
"6","900001","1005","-0.4","1","1","","","","",""
"7","900002","1008","132","","49","","","","",""
"8","900002","1114","","","49","","","","",""
"9","900003","203","4.5","","","","","","",""
"10","900004","1008","500","","","","","","",""
"11","900002","7777","1","","","","","","",""
`,
  'food_portion.csv': `"id","fdc_id","seq_num","amount","measure_unit_id","portion_description","modifier","gram_weight","data_points","footnote","min_year_acquired"
"1","900001","1","1.0","1000","","","185","","",""
"2","900002","1","0.5","9999","","cup, mashed; hot","92.5","","",""
"3","900003","1","","9999","1 bowl","10205","245","","",""
"4","900003","2","","9999","Quantity not specified","90000","245","","",""
"5","900004","1","1","1000","","","30","","",""
"6","900001","2","2.0","1001","","","","","",""
`,
};
