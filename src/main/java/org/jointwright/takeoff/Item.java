package org.jointwright.takeoff;

/** What is ordered or counted, in the order that an order sheet lists it. */
public enum Item {
  /** The concrete of one slab as the plan has it. */
  SLAB(Group.CONCRETE),
  /** What its thickened edges take besides. */
  THICKENED(Group.CONCRETE),
  /** What is ordered over that. */
  ALLOWANCE(Group.CONCRETE),
  /** Of it, the concrete without color, where some of it is colored. */
  PLAIN(Group.CONCRETE),
  /** Of it, the concrete of one color. */
  COLORED(Group.CONCRETE),
  /** The concrete to order. */
  CONCRETE(Group.CONCRETE),
  /** How many trucks bring it. */
  LOADS(Group.CONCRETE),
  /** The base of one slab, compacted. */
  BASE(Group.STONE),
  /** The stone to order for all bases. */
  STONE(Group.STONE),
  /** Form boards along straight edges, by height. */
  BOARDS(Group.FORMS),
  /** Form boards that bend. */
  BENT_BOARDS(Group.FORMS),
  /** Boards across a slab where a pour ends. */
  STOPS(Group.FORMS),
  /** Stakes for all boards. */
  STAKES(Group.FORMS),
  /** Filler, by width and height. */
  FILLER(Group.JOINTS),
  /** Joints tooled, by depth. */
  TOOLED(Group.JOINTS),
  /** Joints sawn, by depth. */
  SAWN(Group.JOINTS),
  /** Joints sawn early, by depth. */
  EARLY(Group.JOINTS),
  /** What is to be cured and sealed. */
  SURFACE(Group.SURFACE),
  /** What is finished in one way. */
  FINISH(Group.SURFACE),
  /** What one color is shaken onto. */
  SHAKE_ON(Group.SURFACE),
  /** Curing compound. */
  CURE(Group.SURFACE),
  /** Sealer for one coat. */
  SEALER(Group.SURFACE),
  /** Sheets of welded wire, for a slab that gets any. */
  MESH(Group.SURFACE);

  /** What belongs together on an order sheet. */
  public enum Group {
    CONCRETE,
    STONE,
    FORMS,
    JOINTS,
    SURFACE
  }

  private final Group group;

  Item(Group group) {
    this.group = group;
  }

  /** Where it is listed. */
  public Group group() {
    return group;
  }
}
