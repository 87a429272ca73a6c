package org.jointwright.sheet.svg;

import org.jointwright.sheet.page.Origin;
import org.jointwright.sheet.page.Page;
import org.jointwright.sheet.page.SheetSet;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/**
 * What the file of a page says of itself, in the terms of the Dublin Core Metadata Element Set 1.1
 * and in RDF, as SVG 1.1, section 21, shows it; beside it, as that section allows of elements of
 * other namespaces, the plan that the page was printed from.
 */
final class Metadata {
  /** The namespace of the element that holds a plan. */
  static final String PLAN_SPACE = "urn:jointwright:plan";

  /** The name of that element. */
  static final String PLAN = "plan";

  /** The attribute of it that tells whether it was changed. */
  static final String STAMP = "stamp";

  private static final String XMLNS = "http://www.w3.org/2000/xmlns/";
  private static final String RDF = "http://www.w3.org/1999/02/22-rdf-syntax-ns#";
  private static final String DC = "http://purl.org/dc/elements/1.1/";

  private final Document document;

  private Metadata(Document document) {
    this.document = document;
  }

  /** Adds to {@code metadata} what there is to say of a page of a set. */
  static void add(Element metadata, SheetSet set, Page page, Origin origin) {
    new Metadata(metadata.getOwnerDocument()).tell(metadata, set, page, origin);
  }

  private void tell(Element metadata, SheetSet set, Page page, Origin origin) {
    Element rdf = child(metadata, RDF, "rdf:RDF");
    rdf.setAttributeNS(XMLNS, "xmlns:rdf", RDF);
    rdf.setAttributeNS(XMLNS, "xmlns:dc", DC);
    Element about = child(rdf, RDF, "rdf:Description");
    about.setAttributeNS(RDF, "rdf:about", "");
    term(about, "title", page.title());
    term(about, "subject", origin.job());
    set.date().ifPresent(d -> term(about, "date", d.toString()));
    term(about, "creator", origin.program());
    term(about, "language", set.language().toLanguageTag());
    term(about, "format", "image/svg+xml");
    Element plan = child(metadata, PLAN_SPACE, PLAN);
    plan.setAttributeNS(XMLNS, "xmlns", PLAN_SPACE);
    plan.setAttribute(STAMP, Origin.stamp(origin.plan()));
    // Quotes stay quotes for whoever looks; the end of such a section cannot stand in one.
    for (String part : origin.plan().split("(?<=\\]\\])(?=>)", -1)) {
      plan.appendChild(document.createCDATASection(part));
    }
    metadata.appendChild(document.createTextNode("\n"));
  }

  private void term(Element about, String name, String value) {
    if (!value.isBlank()) {
      child(about, DC, "dc:" + name).appendChild(document.createTextNode(value));
    }
  }

  private Element child(Element parent, String space, String name) {
    Element e = document.createElementNS(space, name);
    parent.appendChild(document.createTextNode("\n"));
    parent.appendChild(e);
    return e;
  }
}
