package org.jointwright.file;

/** A place in a file: {@code slabs[0].outline[3]}. The text is only made when it is asked for. */
sealed interface Place {
  /** As the user reads it; empty for the whole file. */
  String text();

  /** The member of that name. */
  default Place key(String name) {
    return new Key(this, name);
  }

  /** The item of that number. */
  default Place item(int index) {
    return new Item(this, index);
  }

  /** The whole file. */
  record Top() implements Place {
    @Override
    public String text() {
      return "";
    }
  }

  /** A member of an object. */
  record Key(Place in, String name) implements Place {
    @Override
    public String text() {
      return in instanceof Top ? name : in.text() + "." + name;
    }
  }

  /** An item of an array. */
  record Item(Place in, int index) implements Place {
    @Override
    public String text() {
      return in.text() + "[" + index + "]";
    }
  }
}
