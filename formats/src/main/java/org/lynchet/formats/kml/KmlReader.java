package org.lynchet.formats.kml;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.lynchet.formats.DeclaredCrs;
import org.lynchet.formats.Fault;
import org.lynchet.formats.FaultList;
import org.lynchet.formats.FeatureReader;
import org.lynchet.formats.FeatureTable;
import org.lynchet.formats.FormatException;
import org.lynchet.formats.InputFile;
import org.lynchet.formats.NamedChoice;
import org.lynchet.formats.PackedFiles;
import org.lynchet.formats.XmlElement;
import org.lynchet.formats.XmlInput;

/** Finds the placemarks of a file or a folder in it and makes a table of them. */
final class KmlReader implements FeatureReader {
  private static final NamedChoice<XmlElement> CHOICE =
      new NamedChoice<>(
          "folder",
          KmlReader::name,
          KmlReader::name,
          "a folder that has a name",
          "name one behind the file, as in field.kml#boundary");

  private final String folder;

  KmlReader(String folder) {
    this.folder = folder;
  }

  @Override
  public FeatureTable read(Path file) throws FormatException {
    String place = file.toString();
    XmlElement root = XmlInput.read(bytes(file), place);
    if (!root.name().equals("kml")) {
      throw fault("the root element is " + root.name(), place, "kml", "name a .kml or .kmz file");
    }
    XmlElement within = folder.isEmpty() ? root : folder(root, place);
    List<XmlElement> placemarks = new ArrayList<>();
    collect(within, "Placemark", placemarks);
    FaultList faults = new FaultList();
    PlacemarkTable table = new PlacemarkTable(root, place, faults);
    FeatureTable made =
        new FeatureTable(
            folder.isEmpty() ? InputFile.baseName(file) : folder,
            DeclaredCrs.LON_LAT,
            table.columns(placemarks),
            table.features(placemarks));
    faults.throwIfAny();
    return made;
  }

  private static byte[] bytes(Path file) throws FormatException {
    if (!InputFile.name(file).toLowerCase(Locale.ROOT).endsWith(".kmz")) {
      return InputFile.read(file);
    }
    try (PackedFiles packed = PackedFiles.open(file)) {
      List<String> found = packed.names().stream().filter(n -> n.endsWith(".kml")).toList();
      String name = found.contains("doc.kml") || found.size() != 1 ? "doc.kml" : found.get(0);
      byte[] bytes = packed.find(name);
      if (bytes == null) {
        throw fault(
            found.isEmpty() ? "no .kml in it" : "several .kml in it: " + found,
            file.toString(),
            "doc.kml, or one .kml",
            "export it again");
      }
      return bytes;
    }
  }

  private XmlElement folder(XmlElement root, String place) throws FormatException {
    List<XmlElement> folders = new ArrayList<>();
    collect(root, "Folder", folders);
    collect(root, "Document", folders);
    folders.removeIf(f -> name(f).isEmpty());
    return CHOICE.choose(folders, folder, place);
  }

  private static String name(XmlElement element) {
    return element.findChild("name").map(XmlElement::text).orElse("");
  }

  /** Folders lie in folders: those inside a found one are found as well. */
  private static void collect(XmlElement element, String name, List<XmlElement> found) {
    for (XmlElement child : element.children()) {
      if (child.name().equals(name)) {
        found.add(child);
      }
      collect(child, name, found);
    }
  }

  private static FormatException fault(String what, String where, String allowed, String next) {
    return new FormatException(new Fault(what, where, allowed, next));
  }
}
