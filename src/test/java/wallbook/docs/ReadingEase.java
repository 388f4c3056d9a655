package wallbook.docs;

import eu.crydee.syllablecounter.SyllableCounter;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.ToIntFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How plain sentences are: the longer sentences and words, the lower the figure. */
enum ReadingEase {
  /** Flesch 1948: 206.835 − 1.015 words per sentence − 84.6 syllables per word. */
  ENGLISH(206.835, 1.015, 84.6) {
    @Override
    ToIntFunction<String> syllables() {
      return new SyllableCounter()::count;
    }
  },
  /** Fernández Huerta 1959: 206.84 − 1.02 words per sentence − 60 syllables per word. */
  SPANISH(206.84, 1.02, 60) {
    @Override
    ToIntFunction<String> syllables() {
      return ReadingEase::ofSpanish;
    }
  };

  private static final Pattern WORD = Pattern.compile("\\p{L}+(?:['’]\\p{L}+)*");
  private static final String STRONG = "aeoáéóíú";
  private static final String WEAK = "iuü";

  private final double constant;
  private final double perSentenceLength;
  private final double perWordLength;

  ReadingEase(double constant, double perSentenceLength, double perWordLength) {
    this.constant = constant;
    this.perSentenceLength = perSentenceLength;
    this.perWordLength = perWordLength;
  }

  abstract ToIntFunction<String> syllables();

  /** The figure of sentences taken together. */
  double of(List<String> sentences) {
    ToIntFunction<String> syllables = syllables();
    int words = 0;
    int counted = 0;
    for (String sentence : sentences) {
      Matcher word = WORD.matcher(sentence);
      while (word.find()) {
        words++;
        counted += Math.max(1, syllables.applyAsInt(word.group().toLowerCase(Locale.ROOT)));
      }
    }
    return constant
        - perSentenceLength * words / sentences.size()
        - perWordLength * counted / words;
  }

  /**
   * The sentences of a text: what a full stop, colon, semicolon, question or exclamation mark ends,
   * as Flesch counts (How to Write Plain English, 1979, chapter 2; from memory).
   */
  static List<String> sentences(String text) {
    return Arrays.stream(text.split("(?<=[.!?:;])\\s+"))
        .map(String::strip)
        .filter(s -> WORD.matcher(s).results().count() > 0)
        .toList();
  }

  /**
   * Syllables of a Spanish word by the rules of the Ortografía of 2010 (RAE, chapter I, 3.4): each
   * strong vowel is a syllable's core, an accented weak one too; other weak vowels join a core, or
   * one another.
   */
  static int ofSpanish(String word) {
    String vowels = word.endsWith("y") ? word.substring(0, word.length() - 1) + "i" : word;
    int cores = 0;
    boolean openWeak = false;
    boolean afterStrong = false;
    for (int i = 0; i < vowels.length(); i++) {
      char c = vowels.charAt(i);
      if (STRONG.indexOf(c) >= 0) {
        cores++;
        openWeak = false;
        afterStrong = true;
      } else if (WEAK.indexOf(c) >= 0) {
        openWeak = openWeak || !afterStrong;
      } else {
        cores += openWeak ? 1 : 0;
        openWeak = false;
        afterStrong = false;
      }
    }
    return cores + (openWeak ? 1 : 0);
  }
}
