package org.lynchet.formats;

import java.io.Serializable;

/**
 * One thing wrong in what the user gave, told so that the user can mend it.
 *
 * @param what what is wrong, with the value seen
 * @param where file and place in it: line and column, key, record, ring, vertex
 * @param allowed what is allowed there
 * @param next what to do about it
 */
public record Fault(String what, String where, String allowed, String next)
    implements Serializable {}
