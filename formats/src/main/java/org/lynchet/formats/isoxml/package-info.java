/**
 * Reads, writes and checks task data of ISO 11783-10:2015, versions 3.3 and 4.3.
 *
 * <p>Words of the standard: <em>task data</em> is a folder TASKDATA with TASKDATA.XML in it; an
 * <em>element</em> has a tag of three letters (in brackets here) and attributes of one letter; a
 * <em>part-field</em> (PFD) is a field with its boundary; a <em>task</em> (TSK) is one job on it; a
 * <em>treatment zone</em> (TZN) has a code, unique in its task, and <em>process data values</em>
 * (PDV): a number for what a <em>DDI</em>, a code of ISO 11783-11, stands for; a <em>value
 * presentation</em> (VPN) says how a terminal shows such a number; a <em>guidance group</em> (GGP)
 * holds <em>guidance patterns</em> (GPN): AB lines, lines by point and heading (A+), curves,
 * pivots, spirals.
 *
 * <p>Valid input for writing: a {@link org.lynchet.formats.isoxml.TaskSet} in longitude and
 * latitude with at most nine decimals; names of more than 32 characters are cut. Valid input for
 * reading: TASKDATA.XML with the files that it names beside it, or a .zip of them; major versions 2
 * to 4; rings may be left open, and are closed.
 *
 * <p>Start at {@link org.lynchet.formats.isoxml.TaskData}.
 */
@NullMarked
package org.lynchet.formats.isoxml;

import org.jspecify.annotations.NullMarked;
