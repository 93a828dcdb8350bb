package fettle.desk.web;

import fettle.machine.text.BookFiles;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.eclipse.jgit.dircache.DirCache;
import org.eclipse.jgit.dircache.DirCacheBuilder;
import org.eclipse.jgit.dircache.DirCacheEntry;
import org.eclipse.jgit.internal.storage.file.FileRepository;
import org.eclipse.jgit.lib.CommitBuilder;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.FileMode;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.ObjectInserter;
import org.eclipse.jgit.lib.PersonIdent;
import org.eclipse.jgit.lib.RefUpdate;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.lib.StoredConfig;
import org.eclipse.jgit.revwalk.RevCommit;
import org.eclipse.jgit.revwalk.RevWalk;
import org.eclipse.jgit.treewalk.TreeWalk;
import org.eclipse.jgit.util.FS;
import org.eclipse.jgit.util.SystemReader;

/** Every saved version of a book, kept beside it in a store of its own. */
final class History {

  private static final String BRANCH = "refs/heads/book";
  private static final String BACK = "Back-to: ";
  private static final int MOST = 500;
  private static final Duration PATIENCE = Duration.ofSeconds(12);
  private static final Duration LEFT = Duration.ofSeconds(5);
  private static final int PAUSE = 50;
  private static final DateTimeFormatter WHEN = DateTimeFormatter.ofPattern("d MMM yyyy, HH:mm:ss");

  private final Path store;

  static {
    SystemReader.setInstance(new OwnSettings(SystemReader.getInstance()));
    FS.FileStoreAttributes.setBackground(true);
  }

  History(Path store) {
    this.store = store;
  }

  /** One saved version. */
  record Version(String id, String when, String what, String backTo, List<String> parents) {}

  /** Keeps the texts as a version, unless they are those of the last one. */
  void keep(BookFiles files, String what, String backTo) {
    try (Repository repository = made()) {
      Instant end = Instant.now().plus(PATIENCE);
      while (!kept(repository, files, what, backTo)) {
        if (Instant.now().isAfter(end)) {
          throw new IOException("another program keeps it to itself");
        }
        removeLeftLock();
        Thread.sleep(PAUSE);
      }
    } catch (IOException e) {
      throw Refused.unwritten("The history could not be written", e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw Refused.disk("The history could not be written: the desk is being closed.");
    }
  }

  /** Tries once; false if another desk writes at this moment, or a lock was left behind. */
  private static boolean kept(Repository repository, BookFiles files, String what, String backTo)
      throws IOException {
    try (ObjectInserter inserter = repository.newObjectInserter()) {
      ObjectId tree = tree(files, inserter);
      ObjectId head = repository.resolve(BRANCH);
      if (head != null && treeOf(repository, head).equals(tree)) {
        return true;
      }
      CommitBuilder commit = new CommitBuilder();
      commit.setTreeId(tree);
      if (head != null) {
        commit.setParentId(head);
      }
      PersonIdent desk = new PersonIdent("desk", "desk@localhost");
      commit.setAuthor(desk);
      commit.setCommitter(desk);
      commit.setMessage(what + (backTo.isEmpty() ? "" : "\n\n" + BACK + backTo));
      ObjectId made = inserter.insert(commit);
      inserter.flush();
      RefUpdate update = repository.updateRef(BRANCH);
      update.setNewObjectId(made);
      update.setExpectedOldObjectId(head == null ? ObjectId.zeroId() : head);
      return switch (update.update()) {
        case NEW, FAST_FORWARD -> true;
        case LOCK_FAILURE -> false;
        default -> throw new IOException("the history answers " + update.getResult());
      };
    }
  }

  /** Takes away the lock of a desk that was killed while it wrote. */
  private void removeLeftLock() throws IOException {
    Path lock = store.resolve(BRANCH + ".lock");
    try {
      Instant made = Files.getLastModifiedTime(lock).toInstant();
      if (made.isBefore(Instant.now().minus(LEFT))) {
        Files.deleteIfExists(lock);
      }
    } catch (NoSuchFileException e) {
      // the other desk is done
    }
  }

  /** Returns the versions, newest first. */
  List<Version> versions() {
    List<Version> versions = new ArrayList<>();
    try (Repository repository = opened();
        RevWalk walk = new RevWalk(repository)) {
      ObjectId head = repository.resolve(BRANCH);
      if (head != null) {
        walk.markStart(walk.parseCommit(head));
        for (RevCommit commit : walk) {
          if (versions.size() < MOST) {
            versions.add(version(commit));
          }
        }
      }
    } catch (IOException e) {
      throw Refused.disk("The history could not be read: " + e.getMessage());
    }
    return List.copyOf(versions);
  }

  /** Returns the version that undoing brings back, if there is one before. */
  Optional<String> before(List<Version> versions) {
    if (versions.isEmpty()) {
      return Optional.empty();
    }
    Version head = versions.get(0);
    while (!head.backTo().isEmpty()) {
      String target = head.backTo();
      Optional<Version> then = versions.stream().filter(v -> v.id().equals(target)).findFirst();
      if (then.isEmpty()) {
        return Optional.empty();
      }
      head = then.get();
    }
    return head.parents().stream().findFirst();
  }

  /** Returns the texts of a version. */
  Map<String, String> texts(String id) {
    Map<String, String> texts = new TreeMap<>();
    try (Repository repository = opened();
        RevWalk walk = new RevWalk(repository);
        TreeWalk files = new TreeWalk(repository)) {
      if (!ObjectId.isId(id) || versions().stream().noneMatch(v -> v.id().equals(id))) {
        throw Refused.missing(
            "The history has no version '" + id + "'.", "Choose one from the list.");
      }
      files.addTree(walk.parseCommit(ObjectId.fromString(id)).getTree());
      files.setRecursive(true);
      while (files.next()) {
        byte[] bytes = repository.open(files.getObjectId(0)).getBytes();
        texts.put(files.getPathString(), new String(bytes, StandardCharsets.UTF_8));
      }
    } catch (IOException e) {
      throw Refused.disk("The history could not be read: " + e.getMessage());
    }
    return texts;
  }

  private Repository opened() throws IOException {
    return new FileRepository(store.toFile());
  }

  /** Opens the store to write; a book that has none yet gets one. */
  private synchronized Repository made() throws IOException {
    Repository repository = opened();
    if (!repository.getObjectDatabase().exists()) {
      repository.create(true);
      StoredConfig config = repository.getConfig();
      config.setBoolean("core", null, "fsyncObjectFiles", true);
      config.setBoolean("core", null, "fsyncRefFiles", true);
      config.save();
    }
    return repository;
  }

  private static ObjectId tree(BookFiles files, ObjectInserter inserter) throws IOException {
    DirCache cache = DirCache.newInCore();
    DirCacheBuilder builder = cache.builder();
    for (Map.Entry<String, String> file : files.texts().entrySet()) {
      DirCacheEntry entry = new DirCacheEntry(file.getKey());
      entry.setFileMode(FileMode.REGULAR_FILE);
      entry.setObjectId(
          inserter.insert(Constants.OBJ_BLOB, file.getValue().getBytes(StandardCharsets.UTF_8)));
      builder.add(entry);
    }
    builder.finish();
    return cache.writeTree(inserter);
  }

  private static ObjectId treeOf(Repository repository, ObjectId commit) throws IOException {
    try (RevWalk walk = new RevWalk(repository)) {
      return walk.parseCommit(commit).getTree().getId();
    }
  }

  private static Version version(RevCommit commit) {
    String back =
        commit
            .getFullMessage()
            .lines()
            .filter(l -> l.startsWith(BACK))
            .map(l -> l.substring(BACK.length()).strip())
            .findFirst()
            .orElse("");
    return new Version(
        commit.getName(),
        WHEN.format(commit.getCommitterIdent().getWhenAsInstant().atZone(ZoneId.systemDefault())),
        commit.getShortMessage(),
        back,
        java.util.Arrays.stream(commit.getParents()).map(RevCommit::getName).toList());
  }
}
