/** Functions in files of formulas that the command line does not call itself, with the reason. */
export const NOT_ASKED_FOR: readonly { readonly because: string; readonly names: readonly string[] }[] = [
  {
    because: 'a step inside a calculation that is reached, which calls it',
    names: [
      ...['readAdult', 'heightInCm', 'weightInKg', 'bmiOf', 'restingEnergyOf', 'fromRow', 'turnAways'],
      ...['readSteps', 'runCourse', 'judgeCourses', 'faultOfFood', 'allHold', 'dailyValueOf'],
      ...['packagesFor', 'alreadyCooked', 'timesRetention', 'yieldOfRow', 'portionOf', 'portionOnBasis'],
      ...[
        'apportion',
        'nearestPour',
        'weighPour',
        'nearestPassing',
        'sumWorked',
        'toFahrenheit',
        'toCelsius',
      ],
    ],
  },
  {
    because: 'puts workings together and has no formula of its own',
    names: ['whenKnown', 'nameInputs', 'substitute', 'combine', 'scaleWorked'],
  },
  {
    because: 'sums, searches or orders rows that are worked out one by one here',
    names: ['sumEquivalents', 'costLadder', 'portionsIn', 'formsOnBasis', 'withinBudget'],
  },
  {
    because:
      'puts the foods of a dish together; dish-parts, served-volume, recipe and swap work out its steps',
    names: ['volumeAsServed', 'partsOf', 'partsWorking', 'dishNutrient', 'dishChanges'],
  },
  {
    because: 'a question about a word or a picture, with no number to check',
    names: ['dishKindOf', 'handFor', 'isIntakeName'],
  },
  {
    because: 'counts people in a room; sums and shares of their answers',
    names: ['isSmallCount', 'answersInAll', 'shareOfAnswers', 'peopleABox'],
  },
];
