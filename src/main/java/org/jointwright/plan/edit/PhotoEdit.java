package org.jointwright.plan.edit;

import java.util.Optional;
import org.jointwright.plan.Photo;
import org.jointwright.plan.Plan;

/** Lays a photo beneath the plan, lays it otherwise, or takes it out where it is empty. */
public record PhotoEdit(Optional<Photo> photo) implements Edit {
  /** The photo as it is to lie. */
  public static PhotoEdit of(Photo photo) {
    return new PhotoEdit(Optional.of(photo));
  }

  @Override
  public Plan applyTo(Plan before) {
    return before.withPhoto(photo);
  }

  @Override
  public Optional<Edit> mergedWith(Edit later) {
    return later instanceof PhotoEdit e && photo.isPresent() && isSamePicture(e)
        ? Optional.of(later)
        : Optional.empty();
  }

  private boolean isSamePicture(PhotoEdit later) {
    return later.photo.map(Photo::picture).equals(photo.map(Photo::picture));
  }
}
