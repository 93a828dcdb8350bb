package fettle.desk.web;

import org.eclipse.jgit.lib.Config;
import org.eclipse.jgit.storage.file.FileBasedConfig;
import org.eclipse.jgit.util.FS;
import org.eclipse.jgit.util.SystemReader;

/** The history keeps to the book: settings of the machine or the user are neither read nor made. */
final class OwnSettings extends SystemReader.Delegate {

  OwnSettings(SystemReader system) {
    super(system);
  }

  @Override
  public FileBasedConfig openUserConfig(Config parent, FS fs) {
    return new Nothing(parent, fs);
  }

  @Override
  public FileBasedConfig openSystemConfig(Config parent, FS fs) {
    return new Nothing(parent, fs);
  }

  @Override
  public FileBasedConfig openJGitConfig(Config parent, FS fs) {
    return new Nothing(parent, fs);
  }

  private static final class Nothing extends FileBasedConfig {

    @SuppressWarnings("NullAway")
    Nothing(Config parent, FS fs) {
      super(parent, null, fs);
    }

    @Override
    public void load() {
      // There is nothing to read.
    }

    @Override
    public void save() {
      // There is nothing to write.
    }

    @Override
    public boolean isOutdated() {
      return false;
    }
  }
}
