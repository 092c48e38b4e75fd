/** Words by their number of syllables, counted by hand. */
type Hand = Readonly<Record<number, string>>;

export const BY_HAND: Readonly<Record<'es' | 'pt' | 'de' | 'fr', Hand>> = {
  // By the spelling rules of the Spanish academy: i and u beside another vowel join it, unless accented.
  es: {
    1: 'sal pan más y hoy muy soy buey guion pie dio que quien seis luz el huí',
    2: 'limpie prohibir agua carne leche queso huevo frutas coma lave lata país raíz día frío maíz tío baúl sodio grasa jugo fibra siete queda guiso ciudad arroz aún ahí búho guía reír quita guerra jueves cuerpo lluvia yuca',
    3: 'diabetes verduras frijoles almendra pescado harina aceite cebolla ahora cacao receta lentejas garbanzos cereal poema bebida comida azúcar peruana leía oía creía oían salían yogures pingüino antigua cuidado cocina',
    4: 'zanahoria alimento aguacate vegetales calorías energía proteína medicina enjuáguelos escúrralos saludable',
    5: 'alimentación enfermedades',
  },
  // As words are divided in Brazil: i and u before another vowel stand alone, after it they join.
  pt: {
    1: 'mães sal pão mãe não é e pais quais põe que mais leu viu',
    2: 'água dia rio tio peixe feijão leite couve maior limão limões cheio muito sauna quase guerra série fruta ruim raiz cair sair meia praia',
    3: 'farinha coração saúde família história moído ideia piada saudável ainda rainha cereais vegetais gratuito cozinha batata contínuo diária juízes',
    4: 'diabetes proteína energia nutriente alimento abóbora caloria',
    5: 'alimentação',
  },
  // As words are divided: Por-ti-on, Ka-lo-rie.
  de: {
    1: 'Salz Brot Fett Ei Obst Reis Saft Tee Fisch Milch Quark',
    2: 'Bohnen Wasser Eier Käse Bauer neue Linie Zucker Spinat Müsli Kaffee Leute Teile Reihe Joghurt Yoghurt ruhig Bäume Möhren',
    3: 'Kalorie Portion Gemüse Museum Ruine Theater Getränke Kartoffel Vollkornbrot aktuell Familie Zutaten',
    4: 'Diabetes Jubiläum Mineralien beinhalten beurteilen Kartoffelbrei Ballaststoffe',
    5: 'Kohlenhydrate',
    6: 'Nahrungsmittelkunde',
  },
  // As spoken with care: the e at the end is silent, an e inside a word is not.
  fr: {
    1: 'sel pain eau fruit lait œufs riz le les que je quatre huile truite tarte pomme vie boîte soupe bien trois août jean l’eau aiment mangent peuvent cuisent qu’il crue',
    2: 'légumes purée année poisson noyau moyen maïs pays pigeon client cruel farine portion souvent argent contient fraîcheur Noël jusqu’à voyage crayon parlaient finissent alcool cuiller bouillon cuillère mangeons',
    3: 'aliment haricot maladie lentement nourriture océan réaction cacao poésie ingrédient différent aujourd’hui calorie céréale protéine oublier paysage chocolat vitamine',
    4: 'médicament légumineuse coopérer alimentaire',
    5: 'alimentation réutiliser',
  },
};
