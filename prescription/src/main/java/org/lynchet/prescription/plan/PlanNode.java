package org.lynchet.prescription.plan;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A value of a plan file with its place. */
sealed interface PlanNode {
  /** Its line, from 1. */
  int line();

  /** Its column, from 1. */
  int column();

  /** What it is, in words for messages. */
  String kind();

  /** A single value: text, a number, yes or no; empty text for nothing. */
  record Scalar(String text, int line, int column) implements PlanNode {
    @Override
    public String kind() {
      return text.isEmpty() ? "nothing" : "'" + text + "'";
    }
  }

  /** A list of values. */
  record Listing(List<PlanNode> items, int line, int column) implements PlanNode {
    @Override
    public String kind() {
      return "a list";
    }
  }

  /** Keys with values. */
  record Mapping(
      LinkedHashMap<String, PlanNode> entries, Map<String, int[]> keyPlaces, int line, int column)
      implements PlanNode {
    @Override
    public String kind() {
      return "keys with values";
    }
  }
}
