package org.lynchet.prescription.cli;

import java.util.Arrays;
import java.util.stream.Collectors;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * Reads one of a few words, in small or capital letters; a fault lists them as they are written in
 * plans.
 *
 * @param <E> what the words stand for; its text is the word
 */
record OneOf<E extends Enum<E>>(Class<E> words) implements ITypeConverter<E> {
  @Override
  public E convert(String written) {
    return Arrays.stream(words.getEnumConstants())
        .filter(word -> word.toString().equalsIgnoreCase(written))
        .findFirst()
        .orElseThrow(
            () ->
                new TypeConversionException(
                    "expected one of "
                        + Arrays.stream(words.getEnumConstants())
                            .map(Enum::toString)
                            .collect(Collectors.joining(", "))
                        + ", but was '"
                        + written
                        + "'"));
  }
}
