package org.lynchet.formats.isoxml;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What one attribute of one element may be.
 *
 * @param attribute its letter
 * @param kind what its values are
 * @param required whether it must be there
 * @param low the least value; for texts unused
 * @param highOld the greatest value in version 3.3, or the greatest length of a text
 * @param high the same in version 4.3
 * @param target the tag that a reference names
 */
record AttributeRule(
    String attribute,
    Kind kind,
    boolean required,
    double low,
    double highOld,
    double high,
    String target) {

  /** What the values of an attribute are. */
  enum Kind {
    /** The element's own id. */
    ID,
    /** The id of another element. */
    REFERENCE,
    TEXT,
    WHOLE,
    /** A decimal without exponent, at most nine digits after the point in version 4.3. */
    DECIMAL,
    /** A decimal with or without exponent. */
    REAL,
    /** A DDI: four hexadecimal digits. */
    DDI
  }

  /**
   * The attributes of ISO 11783-10:2015, Annex D, that strips use: {@code !} required, {@code >}
   * reference, {@code s} text, {@code ..} whole numbers, {@code :} decimals, {@code |} another
   * limit in version 4.3. {@code max} is 4294967294.
   */
  private static final String TABLE =
      """
      CTR A=id! B=s32! C=s32 D=s32 E=s32 F=s10 G=s32 H=s32 I=s32 J=s20 K=s20 L=s20 M=s64
      FRM A=id! B=s32! C=s32 D=s32 E=s10 F=s32 G=s32 H=s32 I=>CTR
      CTP A=id! B=s32! C=>PGP
      CVT A=id! B=s32! C=>PDT
      PGP A=id! B=s32! C=1..2
      PDT A=id! B=s32! C=>PGP D=>VPN E=ddi F=1..3 G=int H=int I=int J=int
      VPN A=id! B=int! C=0.000000001~100000000! D=0..7! E=s32 F=>CLD
      PFD A=id! B=s32 C=s32! D=0..max! E=>CTR F=>FRM G=>CTP H=>CVT I=>PFD
      PLN A=1..8|12! B=s32 C=0..max D=0..254 E=id
      LSG A=1..8|9! B=s32 C=0..max D=0..max E=0..254 F=id
      PNT A=1..2|11! B=s32 C=-90:90! D=-180:180! E=int F=0..254 G=id
      TSK A=id! B=s32 C=>CTR D=>FRM E=>PFD F=>WKR G=1..4|6! H=0..254 I=0..254 J=0..254
      TZN A=0..254! B=s32 C=0..254
      PDV A=ddi! B=int! C=>PDT D=>DET E=>VPN
      GRD A=-90:90! B=-180:180! C=0~1! D=0~1! E=1..max! F=1..max! G=s8! H=0..max I=1..2! J=0..254
      GGP A=id! B=s32
      GPN A=id! B=s32 C=1..5! D=1..3 E=1..4 F=1..4 G=0:360 H=0..max I=0..17 L=>BSN M=s32 N=0..max O=0..max
      GAN A=>GGP!
      """;

  private static final Map<String, List<AttributeRule>> BY_TAG = parse();

  /** The rules of an element; none for elements that strips don't use. */
  static List<AttributeRule> of(String tag) {
    return BY_TAG.getOrDefault(tag, List.of());
  }

  private static Map<String, List<AttributeRule>> parse() {
    Map<String, List<AttributeRule>> rules = new HashMap<>();
    for (String row : TABLE.lines().toList()) {
      List<String> cells = List.of(row.split(" ", -1));
      rules.put(
          cells.get(0),
          cells.subList(1, cells.size()).stream().map(cell -> parse(cells.get(0), cell)).toList());
    }
    return rules;
  }

  private static AttributeRule parse(String tag, String cell) {
    boolean required = cell.endsWith("!");
    String letter = cell.substring(0, 1);
    String rule = cell.substring(2, cell.length() - (required ? 1 : 0));
    if (rule.equals("id")) {
      return new AttributeRule(letter, Kind.ID, required, 0, 0, 0, letter.equals("A") ? tag : "");
    }
    if (rule.equals("ddi")) {
      return new AttributeRule(letter, Kind.DDI, required, 0, 0, 0, "");
    }
    if (rule.equals("int")) {
      return new AttributeRule(
          letter,
          Kind.WHOLE,
          required,
          Integer.MIN_VALUE,
          Integer.MAX_VALUE,
          Integer.MAX_VALUE,
          "");
    }
    if (rule.startsWith(">")) {
      return new AttributeRule(letter, Kind.REFERENCE, required, 0, 0, 0, rule.substring(1));
    }
    if (rule.startsWith("s")) {
      double length = Double.parseDouble(rule.substring(1));
      return new AttributeRule(letter, Kind.TEXT, required, 0, length, length, "");
    }
    Kind kind = rule.contains("..") ? Kind.WHOLE : rule.contains(":") ? Kind.DECIMAL : Kind.REAL;
    String[] limits = rule.replace("max", "4294967294").split("\\.\\.|[:~|]", -1);
    double high = Double.parseDouble(limits[1]);
    return new AttributeRule(
        letter,
        kind,
        required,
        Double.parseDouble(limits[0]),
        high,
        limits.length > 2 ? Double.parseDouble(limits[2]) : high,
        "");
  }
}
