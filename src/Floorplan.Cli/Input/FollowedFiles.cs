namespace Floorplan.Cli.Input;

/// <summary>
/// Waits until one of some files is saved. The system tells of it at once where it can; a look at time and length twice a second finds the
/// rest, such as a folder on a network.
/// </summary>
internal sealed class FollowedFiles : IDisposable
{
    private static readonly TimeSpan betweenLooks = TimeSpan.FromMilliseconds(500);

    /// <summary>A file that changed is read when it has been still for so long: editors write in steps. Own choice.</summary>
    private static readonly TimeSpan still = TimeSpan.FromMilliseconds(40);

    private readonly Dictionary<string, FileSystemWatcher?> watchers = [];
    private readonly SemaphoreSlim told = new(0);
    private Dictionary<string, Stamp> seen = [];

    /// <summary>
    /// Looks at the files as they are now, before they are read: what is saved from here on is told by <see cref="Wait"/>.
    /// </summary>
    /// <param name="paths">Full paths; a file need not be there.</param>
    public void Look(IEnumerable<string> paths)
    {
        seen = paths.Distinct().ToDictionary(p => p, Stamp.Of);
        foreach (string folder in seen.Keys.Select(Path.GetDirectoryName).OfType<string>().Distinct())
        {
            if (!watchers.ContainsKey(folder))
            {
                watchers[folder] = Watch(folder);
            }
        }
    }

    /// <summary>Also waits for a file that was not known yet when <see cref="Look"/> was called.</summary>
    public void LookAlso(IEnumerable<string> paths)
    {
        var known = seen;
        Look([.. known.Keys, .. paths]);
        foreach (var (path, stamp) in known)
        {
            seen[path] = stamp;
        }
    }

    /// <summary>True once something was saved; false once it is to stop.</summary>
    public bool Wait(CancellationToken stop)
    {
        try
        {
            while (!HasChanged())
            {
                told.Wait(betweenLooks, stop);
            }

            Dictionary<string, Stamp> before;
            do
            {
                before = Now();
                Task.Delay(still, stop).Wait(stop);
            }
            while (!Same(before, Now()) || !before.Any(f => f.Value.Exists));
            return true;
        }
        catch (OperationCanceledException)
        {
            return false;
        }
    }

    public void Dispose()
    {
        foreach (var watcher in watchers.Values)
        {
            watcher?.Dispose();
        }

        told.Dispose();
    }

    private bool HasChanged() => !Same(seen, Now());

    private Dictionary<string, Stamp> Now() => seen.Keys.ToDictionary(p => p, Stamp.Of);

    private static bool Same(Dictionary<string, Stamp> a, Dictionary<string, Stamp> b) => a.All(f => b[f.Key] == f.Value);

    /// <summary>Null where the system does not tell, such as when it watches too many folders already.</summary>
    private FileSystemWatcher? Watch(string folder)
    {
        try
        {
            var watcher = new FileSystemWatcher(folder);
            watcher.Changed += (_, _) => Tell();
            watcher.Created += (_, _) => Tell();
            watcher.Renamed += (_, _) => Tell();
            watcher.EnableRaisingEvents = true;
            return watcher;
        }
        catch (Exception problem) when (problem is IOException or ArgumentException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    private void Tell()
    {
        try
        {
            told.Release();
        }
        catch (ObjectDisposedException)
        {
        }
    }

    private readonly record struct Stamp(bool Exists, DateTime Saved, long Length)
    {
        public static Stamp Of(string path)
        {
            var file = new FileInfo(path);
            return file.Exists ? new Stamp(true, file.LastWriteTimeUtc, file.Length) : default;
        }
    }
}
