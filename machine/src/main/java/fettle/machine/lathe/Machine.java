package fettle.machine.lathe;

import fettle.machine.dictionary.Values;
import java.util.Map;

/**
 * A lathe, wholly described.
 *
 * @param name what it is called
 * @param members its bodies, by name
 * @param trains its chains of motion, by name
 * @param dials its dials, by name
 * @param values everything the book says of it
 */
public record Machine(
    String name,
    Map<String, Member> members,
    Map<String, Train> trains,
    Map<String, Dial> dials,
    Values values) {

  /** Returns a member by name. */
  public Member member(String member) {
    Member found = members.get(member);
    if (found == null) {
      throw new IllegalArgumentException("the lathe has no member " + member);
    }
    return found;
  }
}
