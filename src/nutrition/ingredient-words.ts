import { CONTENTS } from './food.js';

/** What ingredient words can stand for: the contents of a food, and more that some needs leave out. */
export const INGREDIENT_GROUPS = [
  ...CONTENTS,
  'pork',
  'gelatin',
  'animal fat or extract',
  'insect product',
  'animal rennet',
  'wool fat',
  'alcohol',
  'oats',
  'coconut',
  'fish without scales',
] as const;
export type IngredientGroup = (typeof INGREDIENT_GROUPS)[number];

/** The words of a group, each list parted by semicolons, in the singular. */
export interface GroupWords {
  /** Words that mean that it is in. */
  readonly is: string;
  /** Words that may mean it: what is in depends on the maker. */
  readonly maybe: string;
  /** Words that look like it and are something else; they win over shorter ones inside them. */
  readonly not: string;
}

const PLANT_MILKS =
  'almond milk; cashew milk; coconut milk; hazelnut milk; hemp milk; oat milk; pea milk; rice milk; soy milk; soya milk';
const OTHER_FLOURS =
  'almond flour; amaranth flour; buckwheat flour; cassava flour; chickpea flour; coconut flour; corn flour; gram flour; ' +
  'lentil flour; lupin flour; masa flour; millet flour; nut flour; pea flour; peanut flour; potato flour; quinoa flour; ' +
  'rice flour; sorghum flour; soy flour; soya flour; tapioca flour; teff flour; oat flour; banana flour; plantain flour; ' +
  'corn tortilla; corn bread; cornbread; rice cracker; rice noodle; glass noodle; cellophane noodle; rice paper; rice bran; ' +
  'corn starch; potato starch; tapioca starch; rice starch; rice pasta; corn pasta; lentil pasta; chickpea pasta; ' +
  'bean thread; kelp noodle; spaghetti squash; shirataki noodle; oat bran; corn chip; flourless; corn couscous; breadfruit; sweetbread';
const PLANT_MEATS =
  'beefsteak tomato; beef tomato; crab apple; vegetable stock; vegetable broth; vegetable bouillon; mushroom broth; ' +
  'mushroom stock; veggie burger; soy chorizo; soy sausage; chicken of the woods; hen of the woods; duck sauce; oyster mushroom; lobster mushroom; lamb lettuce; ' +
  "lamb's lettuce; lamb's quarters; goat cheese; goat milk; sheep milk; sheep cheese; goat yogurt; turkey berry; " +
  'coconut meat; nut meat; crab meat; fish stock; fish broth';

/**
 * English ingredient words by group. From memory, checked against the labeling rules for the nine major allergens in
 * the United States; no list of words is complete. Other languages need lists of their own.
 */
export const INGREDIENT_WORDS: Readonly<Record<IngredientGroup, GroupWords>> = {
  meat: {
    is:
      'meat; beef; veal; pork; ham; bacon; sausage; chorizo; salami; pepperoni; prosciutto; lamb; mutton; goat; venison; ' +
      'rabbit; chicken; turkey; duck; goose; quail; liver; tripe; oxtail; hot dog; frankfurter; bologna; jerky; pâté; ' +
      'sweetbread; chitterling; chicken broth; beef broth; chicken stock; beef stock; bone broth; chicken fat; lardon; pancetta',
    maybe: 'broth; stock; bouillon; gravy; demi glace; meatball; burger; mincemeat; refried bean',
    not: PLANT_MEATS,
  },
  fish: {
    is:
      'fish; anchovy; bass; catfish; cod; eel; flounder; haddock; halibut; herring; mackerel; mahi mahi; perch; pike; ' +
      'pollock; salmon; sardine; snapper; sole; swordfish; tilapia; trout; tuna; roe; caviar; surimi; fish sauce; ' +
      'fish oil; bonito; dashi; isinglass; garum; worcestershire; worcestershire sauce; fish stock; fish broth',
    maybe: 'caesar dressing; omega 3; kimchi; xo sauce; imitation crab; tapenade; curry paste',
    not: 'vegan fish sauce; vegan worcestershire sauce; vegan worcestershire; kombu dashi',
  },
  shellfish: {
    is:
      'shellfish; shrimp; prawn; crab; lobster; crayfish; crawfish; langoustine; scampi; krill; clam; mussel; oyster; ' +
      'scallop; squid; calamari; octopus; snail; abalone; conch; cuttlefish; oyster sauce; shrimp paste',
    maybe: 'surimi; imitation crab; seafood; glucosamine; kimchi; xo sauce; curry paste; bouillabaisse',
    not: 'crab apple; oyster mushroom; lobster mushroom; scallop squash; scalloped potato; vegan oyster sauce; oyster cracker; vegetarian oyster sauce',
  },
  milk: {
    is:
      'milk; buttermilk; butter; butterfat; butteroil; ghee; cream; cheese; cheddar; mozzarella; parmesan; ricotta; feta; ' +
      'paneer; queso; yogurt; yoghurt; kefir; curd; custard; whey; casein; caseinate; lactalbumin; lactoglobulin; ' +
      'lactose; ice cream; half and half; crème fraîche; dulce de leche; quark; malted milk; milk powder; lactoferrin',
    maybe:
      'caramel; nougat; chocolate; margarine; lactic acid starter culture; ranch; pesto; natural flavor; non dairy creamer; ' +
      'creamer; nondairy creamer; pudding; brioche; pancake; biscuit',
    not:
      `${PLANT_MILKS}; peanut butter; almond butter; cashew butter; nut butter; seed butter; sunflower butter; apple butter; ` +
      'pumpkin butter; cocoa butter; shea butter; soy butter; butter bean; butter lettuce; butterhead; cream of tartar; ' +
      'cream of wheat; cream of rice; coconut cream; creamed corn; cream sherry; milk thistle; milkfish; bean curd; ' +
      'tofu cream; soy yogurt; coconut yogurt; almond yogurt; oat yogurt; oat cream; soy cream; lemon curd; oat drink',
  },
  egg: {
    is:
      'egg; egg white; egg yolk; albumin; albumen; ovalbumin; ovomucoid; lysozyme; mayonnaise; mayo; meringue; eggnog; ' +
      'aioli; hollandaise; custard; egg powder; lemon curd; frittata; omelet',
    maybe:
      'lecithin; surimi; marshmallow; nougat; pasta; noodle; brioche; challah; pancake; waffle; cake; tartar sauce; mayo dressing; egg substitute',
    not: 'eggplant; egg plant; egg fruit; vegan mayonnaise; vegan mayo; rice noodle; glass noodle; soy lecithin; sunflower lecithin; soya lecithin; rice pasta',
  },
  wheat: {
    is:
      'wheat; spelt; kamut; khorasan; einkorn; emmer; durum; farro; semolina; farina; bulgur; seitan; couscous; triticale; ' +
      'graham; matzo; matzah; panko; bread; breadcrumb; pasta; spaghetti; macaroni; orzo; udon; ramen; freekeh; ' +
      'cracked wheat; wheat germ; wheat starch; vital wheat gluten; flour tortilla; cracker; pita; naan; cream of wheat; pretzel; filo; phyllo',
    maybe:
      'flour; noodle; tortilla; soba; soy sauce; shoyu; modified food starch; hydrolyzed vegetable protein; hydrolyzed protein; ' +
      'starch; cereal; cookie; cake; roux; gravy; miso; bran; tempeh; tamari; bun; roll; batter; breading',
    not: `buckwheat; ${OTHER_FLOURS}`,
  },
  gluten: {
    is:
      'gluten; rye; barley; malt; malt extract; malt syrup; malt vinegar; malted milk; pumpernickel; pearl barley; beer; ' +
      'ale; lager; stout; brewer yeast; wheat; spelt; kamut; khorasan; einkorn; emmer; durum; farro; semolina; farina; ' +
      'bulgur; seitan; couscous; triticale; graham; matzo; matzah; panko; bread; breadcrumb; pasta; spaghetti; macaroni; ' +
      'orzo; udon; ramen; freekeh; flour tortilla; cracker; pita; naan; cream of wheat; pretzel; filo; phyllo',
    maybe:
      'flour; noodle; tortilla; soba; soy sauce; shoyu; modified food starch; hydrolyzed vegetable protein; ' +
      'hydrolyzed protein; starch; cereal; cookie; cake; roux; gravy; miso; bran; tempeh; tamari; bun; roll; batter; ' +
      'breading; yeast extract; dextrin; granola; seasoning',
    not: `buckwheat; maltodextrin; corn gluten; rice malt; corn malt; millet malt; ginger beer; ginger ale; root beer; ${OTHER_FLOURS}`,
  },
  soy: {
    is:
      'soy; soya; soybean; tofu; tempeh; edamame; miso; natto; okara; yuba; tamari; shoyu; soy sauce; soy lecithin; ' +
      'textured vegetable protein; bean curd; teriyaki; kinako',
    maybe:
      'lecithin; vegetable protein; hydrolyzed vegetable protein; vegetable oil; vegetable broth; hoisin; vitamin e; bean sprout',
    not: 'chickpea miso; chickpea tofu; sunflower lecithin; egg lecithin; coconut aminos',
  },
  peanut: {
    is: 'peanut; groundnut; peanut butter; monkey nut; beer nut; arachis oil; goober',
    maybe:
      'mixed nut; nut butter; nougat; satay; mole; mandelona; lupin; artificial nut; trail mix; praline; nut',
    not: 'butternut; nutmeg; doughnut; donut; coconut; tiger nut; water chestnut; pine nut; brazil nut; tree nut; macadamia nut; cashew nut; hazel nut; kola nut',
  },
  'tree nut': {
    is:
      'tree nut; almond; brazil nut; cashew; filbert; hazelnut; macadamia; pecan; pine nut; pignoli; piñon; pistachio; ' +
      'walnut; marzipan; frangipane; gianduja; amaretto; almond milk; almond flour; cashew milk; hazelnut milk; almond extract',
    maybe:
      'nut; mixed nut; nut butter; nougat; praline; pesto; granola; trail mix; nut milk; nut flour; chestnut; hickory nut; ' +
      'butternut; beech nut; pili nut; ginkgo nut; shea nut; nut oil; muesli',
    not: 'butternut squash; nutmeg; doughnut; donut; coconut; tiger nut; water chestnut; peanut; ground nut; monkey nut; beer nut; soy nut; corn nut; grape nut',
  },
  sesame: {
    is: 'sesame; tahini; tahina; halva; benne; gingelly; sesame oil; hummus; zaatar; dukkah; gomasio',
    maybe:
      'bun; bagel; falafel; spice blend; seasoning; furikake; natural flavor; cracker; breadstick; baba ghanoush',
    not: '',
  },
  honey: {
    is: 'honey; royal jelly; beeswax; bee pollen; propolis; mead; e901; honeycomb',
    maybe: 'baklava; granola',
    not: 'honeydew; honeydew melon; honeycrisp; honey crisp apple; honeynut squash; honey mushroom',
  },
  pork: {
    is: 'pork; ham; bacon; lard; prosciutto; pancetta; chorizo; pepperoni; chitterling; gammon; pork rind; lardon; pork gelatin; fatback; salami',
    maybe:
      'sausage; hot dog; frankfurter; bologna; gelatin; shortening; animal fat; baked bean; pâté; meatball; refried bean; pepsin',
    not: 'turkey bacon; beef bacon; turkey ham; beef sausage; chicken sausage; turkey sausage; vegan bacon; beef gelatin; fish gelatin; vegetable shortening; turkey pepperoni; beef pepperoni; beef salami',
  },
  gelatin: {
    is: 'gelatin; gelatine; aspic; collagen; e441; marshmallow; gummy; gummi',
    maybe: 'jelly; capsule; yogurt dessert; mousse; panna cotta',
    not: 'royal jelly; vegan marshmallow; grape jelly; fruit jelly; pepper jelly; vegan gelatin; agar; jelly bean',
  },
  'animal fat or extract': {
    is: 'lard; tallow; suet; dripping; schmaltz; animal fat; chicken fat; beef fat; bone phosphate; bone char; pepsin; l cysteine; e920; oleostearin',
    maybe:
      'shortening; mono and diglycerides; monoglyceride; diglyceride; e471; glycerin; glycerol; stearic acid; magnesium stearate; natural flavor; natural flavour; refried bean',
    not: 'vegetable shortening; vegetable glycerin; vegetable suet',
  },
  'insect product': {
    is: 'carmine; cochineal; carminic acid; e120; natural red 4; shellac; confectioner glaze; e904; lac resin; cricket flour; cricket powder',
    maybe: 'natural color; natural colour; red color',
    not: 'indigo carmine',
  },
  'animal rennet': {
    is: 'animal rennet; calf rennet; rennin; parmigiano reggiano; grana padano; pecorino romano; gruyère',
    maybe: 'rennet; cheese; parmesan; cheddar; mozzarella; manchego; romano',
    not: 'vegetable rennet; microbial rennet; vegetarian rennet; cottage cheese; cream cheese; paneer; vegan cheese; soy cheese; cashew cheese',
  },
  'wool fat': {
    is: 'lanolin; wool fat',
    maybe: 'vitamin d3; cholecalciferol; vitamin d',
    not: 'vitamin d2; lichen d3; vegan vitamin d3; vegan d3',
  },
  alcohol: {
    is: 'alcohol; wine; beer; ale; lager; stout; rum; brandy; whiskey; whisky; vodka; gin; sake; mirin; sherry; marsala; port wine; cognac; liqueur; bourbon; tequila; ethanol; champagne; amaretto; mead; rice wine',
    maybe: 'vanilla extract; almond extract; extract; kombucha; natural flavor; bitters; dijon; wine sauce',
    not: 'wine vinegar; red wine vinegar; white wine vinegar; rice wine vinegar; sherry vinegar; root beer; ginger beer; ginger ale; sugar alcohol; malt extract; yeast extract; beer nut; champagne vinegar',
  },
  oats: {
    is: 'oat; oatmeal; oat bran; oat flour; oat milk; oat drink; rolled oat',
    maybe: 'granola; muesli; cereal; flapjack',
    not: '',
  },
  coconut: {
    is: 'coconut; coconut milk; coconut oil; coconut cream; coconut water; coconut flour; copra; nata de coco; coconut aminos',
    maybe: 'curry paste; mct oil',
    not: '',
  },
  'fish without scales': {
    is: 'catfish; eel; shark; swordfish; monkfish; sturgeon; skate; caviar; turbot; burbot',
    maybe: 'fish; fish sauce; fish oil; surimi; roe; fish stock; isinglass',
    not: 'salmon roe',
  },
};

/** Plain ingredients with nothing of any group in them. What stands in no list is not thereby safe. */
export const PLAIN_INGREDIENTS =
  'water; salt; sea salt; sugar; cane sugar; cane juice; brown sugar; vinegar; distilled vinegar; cider vinegar; apple cider vinegar; tomato; onion; ' +
  'onion powder; garlic; garlic powder; carrot; celery; potato; sweet potato; corn; rice; brown rice; white rice; wild rice; quinoa; ' +
  'amaranth; millet; sorghum; teff; buckwheat; lentil; chickpea; bean; black bean; pinto bean; kidney bean; navy bean; pea; split pea; ' +
  'apple; banana; orange; lemon juice; lime juice; mango; strawberry; blueberry; raisin; cabbage; kale; spinach; pumpkin; squash; ' +
  'broccoli; cauliflower; pepper; black pepper; bell pepper; chili pepper; paprika; cumin; turmeric; ginger; cinnamon; oregano; basil; thyme; bay leaf; ' +
  'parsley; cilantro; olive oil; canola oil; sunflower oil; corn oil; cornstarch; corn starch; tapioca; tapioca starch; potato starch; ' +
  'baking soda; citric acid; ascorbic acid; pectin; guar gum; xanthan gum; maple syrup; molasses; agave syrup; cocoa; coffee; ' +
  'plantain; cassava; okra; mushroom; zucchini; eggplant; green bean; beet; avocado; flaxseed; chia seed; sunflower seed; pumpkin seed';
