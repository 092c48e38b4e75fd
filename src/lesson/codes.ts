import { type CodeTable, problemsOf } from '../diagnostics/index.js';

/** Everything that reading a lesson may report. */
export const lessonCodes = {
  'lesson/not-text': {
    severity: 'stop',
    rule: 'A lesson is a text file in UTF-8.',
    about:
      'The file holds bytes that are no UTF-8 text: it may be saved as UTF-16 or in an old encoding, or it may be a picture or a word-processor file. Guessing would print wrong letters. Save it as plain text in UTF-8.',
  },
  'lesson/too-large': {
    severity: 'stop',
    rule: 'A lesson has at most 128 KiB of text, in at most 4,000 lines.',
    about:
      'A talk of forty minutes takes about 30 KiB. A larger file is nearly always something else, and reading it would hold up the build. Split the lesson or take out what does not belong to it.',
  },
  'lesson/too-deep': {
    severity: 'stop',
    rule: 'Lists, quotes, containers, brackets and stars stand at most a few levels inside each other.',
    about:
      'Text nested this deep cannot be printed and is nearly always a slip or an attack on the program. Nothing of the file was read. Take out levels until the place named is no deeper than the limit named.',
  },
  'lesson/control-character': {
    severity: 'stop',
    rule: 'A lesson holds no control characters and no halves of characters.',
    about:
      'Such characters come in with text copied from other programs. They cannot be printed and can hide what the text says. Delete the character at the place named; it was read as a blank.',
  },
  'lesson/front-matter-missing': {
    severity: 'stop',
    rule: 'A lesson begins with its front matter between two lines of three hyphens.',
    about:
      'The front matter says the title, the minutes, the audience, the guidance and what pulls the cautions. Put a line of three hyphens on line 1, the front matter below it, and another line of three hyphens after it.',
  },
  'lesson/front-matter-unclosed': {
    severity: 'stop',
    rule: 'The front matter ends with a line of three hyphens.',
    about:
      'Without the closing line nobody can tell where the front matter ends and the lesson begins. Put a line that holds only three hyphens after the last key.',
  },
  'lesson/yaml': {
    severity: 'stop',
    rule: 'The front matter is YAML.',
    about:
      'The front matter could not be read at the place named. Common causes: a value that holds a colon and a blank and has no quotes around it, a tab, a bracket or quote that is not closed, or a line indented differently from its neighbors.',
  },
  'lesson/yaml-feature': {
    severity: 'stop',
    rule: 'The front matter uses keys, plain values and lists only.',
    about:
      'Anchors, aliases, merge keys and tags can make a small file grow without end or turn a value into something else. Write the value out where it is needed.',
  },
  'lesson/front-key': {
    severity: 'stop',
    rule: 'The front matter holds only known keys, each once.',
    about:
      'A key that is not known would be ignored in silence, and what it was meant to say would be missing. The nearest right name is given.',
  },
  'lesson/front-missing': {
    severity: 'stop',
    rule: 'The front matter holds every key that a lesson needs.',
    about:
      'Title, minutes, audience, objectives, guidance, topics, sources and review have no default, since a guess would print as fact. Add the key.',
  },
  'lesson/front-value': {
    severity: 'stop',
    rule: 'Every value in the front matter is of its kind.',
    about:
      'The value cannot be used as it stands. What the key takes is named with the problem; a value that YAML reads as a number or a list by accident needs quotes.',
  },
  'lesson/refused-name': {
    severity: 'stop',
    rule: 'Names that programs treat in special ways are not allowed as keys or attributes.',
    about:
      'Names such as constructor or onclick mean something to the programs that later show a lesson. No lesson needs them. Delete the name.',
  },
  'lesson/unknown-directive': {
    severity: 'stop',
    rule: 'Every directive has a known name.',
    about:
      'A directive with an unknown name draws nothing, and what it holds would be lost or would print as plain text. The nearest right name is given.',
  },
  'lesson/form': {
    severity: 'stop',
    rule: 'A directive that has a body takes three colons or more and a closing line; one without takes two.',
    about:
      'Some directives are containers with lines of their own, some are one line only, and some may be both. Write the form that the directive has.',
  },
  'lesson/stray-close': {
    severity: 'stop',
    rule: 'A line of colons closes a container that is open.',
    about:
      'The line closes nothing, so an opening line above it is missing or misspelt, or a container was closed twice. Delete the line or restore the opening line.',
  },
  'lesson/unclosed': {
    severity: 'stop',
    rule: 'Every container is closed by a line with as many colons as its opening line.',
    about:
      'Without its closing line a container swallows what follows it. Put a line that holds only the colons after its last line.',
  },
  'lesson/colons': {
    severity: 'stop',
    rule: 'A container takes at least one colon more than what it holds; slide, worksheet and staff take four or more.',
    about:
      'With the same number of colons the closing line of what stands inside closes the container around it. Add a colon to the opening and to the closing line of the outer one.',
  },
  'lesson/opening': {
    severity: 'stop',
    rule: 'The opening line of a directive is colons, name, and attributes in braces, with nothing between and nothing after.',
    about:
      'The name follows the colons at once and the brace follows the name at once. Words belong on the lines below. The line starts at the left edge.',
  },
  'lesson/middle-of-line': {
    severity: 'stop',
    rule: 'A directive stands on a line of its own.',
    about:
      'A directive in the middle of a line, in a list or in a quote is not read as one and would print its own colons. Move it to a line of its own that starts at the left edge.',
  },
  'lesson/inline': {
    severity: 'stop',
    rule: 'In running text only :n[…], :t[…] and :cite[…] are read, with a label in brackets and after a blank or an opening mark.',
    about:
      'Everything else with a colon prints as its own characters, as times and ratios need it. What stands here looks as if a number, a term or a source was meant, and it would print as it stands.',
  },
  'lesson/placement': {
    severity: 'stop',
    rule: 'Every container stands where it means something.',
    about:
      'slide, worksheet, staff and only stand at top level; level stands there or inside one of them; say and do stand in a slide. Elsewhere nobody could tell which output the words are for.',
  },
  'lesson/level-twice': {
    severity: 'stop',
    rule: 'Neighboring level blocks are alternatives, each level once.',
    about:
      'Two blocks for the same level side by side contradict each other. Put the words into one block, or put text that all levels read between the blocks.',
  },
  'lesson/label': {
    severity: 'stop',
    rule: 'Only directives that say so take a label in brackets.',
    about: 'The words in brackets would not be printed anywhere. Delete them, or move them into the body.',
  },
  'lesson/body': {
    severity: 'stop',
    rule: 'A directive holds what it can read: a list, paragraphs, or both.',
    about:
      'What stands here would be lost, since the directive does not know what to do with it. Move it out of the container or write it as a row of the list.',
  },
  'lesson/attribute-name': {
    severity: 'stop',
    rule: 'A directive takes only the attributes that it names, each once.',
    about:
      'An attribute that is not known would be ignored in silence, and of two that are the same one would win. The nearest right name is given.',
  },
  'lesson/attribute-missing': {
    severity: 'stop',
    rule: 'A directive has all the attributes that it needs.',
    about: 'The directive cannot be computed or placed without the attribute. Add it in the braces.',
  },
  'lesson/attribute-value': {
    severity: 'stop',
    rule: 'Every attribute has a value of its kind.',
    about: 'The value cannot be used as it stands. What the attribute takes is named with the problem.',
  },
  'lesson/attribute-writing': {
    severity: 'stop',
    rule: 'Attributes are written name=value or name="two words", parted by blanks, between braces.',
    about:
      'Commas between attributes, curly quotes, values with blanks and no quotes, and missing braces make the whole line plain text for other programs that read Markdown. Write the attributes as shown.',
  },
  'lesson/id': {
    severity: 'stop',
    rule: 'An id is lower-case words joined by hyphens and stands once in a lesson.',
    about:
      'Numbers, pictures and files are named by ids, so an id must be one word that every system can hold, and two directives must not share one. Choose another id.',
  },
  'lesson/reference': {
    severity: 'stop',
    rule: 'What refers to a directive names an id of the same lesson.',
    about:
      'Nothing in this lesson has that id, or what has it cannot be referred to. The nearest right id is given. Ids of other lessons cannot be reached.',
  },
  'lesson/underline': {
    severity: 'stop',
    rule: 'A line of hyphens under text inside a container is refused.',
    about:
      'It would turn the text above it into a heading, and whoever writes it most likely wants a rule or the end of a slide. Write a heading with number signs, and end a container with its colons.',
  },
  'lesson/rule-line': {
    severity: 'hint',
    rule: 'A rule line does nothing.',
    about:
      'Slides are containers on purpose, and sheets draw their own rules, so a line of hyphens or stars is left out. Delete it.',
  },
  'lesson/html': {
    severity: 'stop',
    rule: 'Raw HTML is off.',
    about:
      'A lesson becomes paper and slides, where HTML means nothing, and HTML could carry scripts. It would print as its own characters. Use Markdown or a directive; for a note that never prints, use a staff container.',
  },
  'lesson/link': {
    severity: 'stop',
    rule: 'A link leads to a web page or a mail address.',
    about:
      'Only http:, https: and mailto: links work on paper and in a handed-out file. Other links could run programs or point to files that the reader does not have.',
  },
  'lesson/picture': {
    severity: 'stop',
    rule: 'A picture is a PNG, JPEG or SVG file in the lesson’s own pictures folder.',
    about:
      'A build needs no internet and reads nothing outside the lesson. Put the file into pictures/ beside the lesson and write its name with letters, digits, hyphens, underscores and dots.',
  },
  'lesson/picture-words': {
    severity: 'stop',
    rule: 'Every picture has words that say what it shows.',
    about:
      'Readers who do not see the picture get these words instead. Write what the picture says, not that it is a picture, between the square brackets.',
  },
  'lesson/footnote': {
    severity: 'stop',
    rule: 'Footnotes are not used.',
    about:
      'A note at the foot of a sheet is what people in a waiting room do not read. Name a source with :cite[…] and say everything else in the text.',
  },
  'lesson/table': {
    severity: 'stop',
    rule: 'Every row of a table has as many cells as its head.',
    about:
      'A cell too many would be lost, and a missing one moves what follows under the wrong head. Write an empty cell where there is nothing to say.',
  },
  'lesson/code-unclosed': {
    severity: 'stop',
    rule: 'A block of code is closed by a line like the one that opens it.',
    about:
      'Without the closing line everything after it would be read as code, containers and cautions too. The opening line was left out. Close the block or delete the line.',
  },
} as const satisfies CodeTable;

export const problem = problemsOf(lessonCodes);
