using Floorplan.Cli.Hosting;
using Floorplan.Cli.Output.Drawings.Pages;
using Floorplan.Cli.Output.Files;
using Floorplan.Cli.Output.Printing;
using Floorplan.Model.Binding.Files.Disk;

namespace Floorplan.Cli.Output.Drawings;

/// <summary>
/// The folder that a run draws into. It keeps the list of what was written, takes away what is out of date, follows no link, and writes
/// over no file that the run reads.
/// </summary>
/// <param name="folder">As named on the command line.</param>
/// <param name="inputs">Full paths of the files that the run reads.</param>
/// <param name="known">What this run of the program wrote before; a file that would be the same is left.</param>
internal sealed class OutputFolder(Host host, string folder, IReadOnlyList<string> inputs, WrittenFiles known)
{
    /// <summary>Megabytes; a page of ours with very many findings is smaller.</summary>
    private const int MostOfIndex = 64;

    private const string DrawnFrom = "this is a file that is drawn from, so it is not written over; choose another folder";

    private readonly string full = Path.TrimEndingDirectorySeparator(host.Full(folder));
    private DrawnList list = new();
    private string? written;

    /// <summary>Plans whose drawings the folder holds, of earlier runs and of this one.</summary>
    public IEnumerable<ListedPlan> Plans => list.Plans;

    public bool Holds(string name) => File.Exists(Path.Combine(full, name));

    /// <summary>Looks whether anything can be drawn into it, and reads its list. Returns the exit code; what is wrong is said.</summary>
    public int Open()
    {
        if (new DirectoryInfo(full).LinkTarget is { } target)
        {
            return Refuse($"{folder}: this is a link, and none is followed; name the folder that it leads to: --out {target}");
        }

        if (File.Exists(full))
        {
            return Refuse($"{folder}: this is a file; --out names a folder");
        }

        (list, string? problem) = DrawnList.ReadFrom(full);
        written = Holds(DrawnList.Name) ? list.ToText() : null;
        return problem is null ? ExitCode.Fine : Refuse($"{Shown(DrawnList.Name)}: {problem}; take it away, then draw again");
    }

    /// <summary>
    /// Before the files of a plan are written: lists them, so that they are known even when the run breaks off, and takes away what is
    /// out of date. What cannot be taken away stays listed, and the next run says so again.
    /// </summary>
    /// <returns>Whether its files may be written, and the exit code so far.</returns>
    public (bool MayWrite, int Exit) Begin(DrawnPlan plan, IReadOnlyList<DrawnFile> files)
    {
        if (files.Select(f => f.Name).Append(DrawnList.Name).FirstOrDefault(IsInput) is { } input)
        {
            return (false, Refuse($"{Shown(input)}: {DrawnFrom}"));
        }

        var names = files.Select(f => f.Name).ToHashSet();
        var listed = list.Of(plan.Name) with { Title = plan.Examination.Plan!.Head.Title };
        var stale = listed.Stale(names, plan.Hash, plan.IsWhole ? plan.Formats : null);
        foreach (string name in names)
        {
            listed.Files[name] = plan.Hash;
        }

        list.Set(listed);
        if (WriteList() == ExitCode.CouldNotRun)
        {
            return (false, ExitCode.CouldNotRun);
        }

        int exit = ExitCode.Fine;
        foreach (string name in stale)
        {
            int gone = TakeAway(name);
            exit = Math.Max(exit, gone);
            if (gone == ExitCode.Fine)
            {
                listed.Files.Remove(name);
            }
        }

        return (true, Math.Max(exit, WriteList()));
    }

    public int Put(DrawnFile made)
    {
        string path = Path.Combine(full, made.Name);
        if (known.Holds(path, made.Content))
        {
            return ExitCode.Fine;
        }

        string? problem = IsInput(made.Name) ? DrawnFrom : WholeFile.Replace(path, made.Content);
        if (problem is not null)
        {
            return Refuse($"{Shown(made.Name)}: {problem}");
        }

        known.Add(path, made.Content);
        Page.OfOutput(host).Line("  wrote ", new Piece(Shown(made.Name), Tone.Strong));
        return ExitCode.Fine;
    }

    /// <summary>Writes the index; one that somebody else wrote is left.</summary>
    public int PutIndex(string page)
    {
        string path = Path.Combine(full, IndexPage.Name);
        try
        {
            return !File.Exists(path) || IndexPage.IsOurs(PlainFile.Read(path, MostOfIndex).Text ?? "")
                ? Put(DrawnFile.OfText(IndexPage.Name, page))
                : Refuse($"{Shown(IndexPage.Name)}: draw did not write this page, so it is left; choose another folder");
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return Refuse($"{Shown(IndexPage.Name)}: {problem.Message}");
        }
    }

    private int WriteList()
    {
        string text = list.ToText();
        if (text == written)
        {
            return ExitCode.Fine;
        }

        written = text;
        return WholeFile.Replace(Path.Combine(full, DrawnList.Name), text) is { } problem
            ? Refuse($"{Shown(DrawnList.Name)}: {problem}")
            : ExitCode.Fine;
    }

    private int TakeAway(string name)
    {
        string path = Path.Combine(full, name);
        if (!Path.Exists(path) && new FileInfo(path).LinkTarget is null)
        {
            return ExitCode.Fine;
        }

        if (IsInput(name) || new FileInfo(path).LinkTarget is not null || !File.Exists(path))
        {
            return Refuse($"{Shown(name)}: this is out of date, and it is not a file that was written here, so it is left; take it away");
        }

        try
        {
            File.Delete(path);
            Page.OfOutput(host).Line("  took away ", new Piece(Shown(name), Tone.Strong), ", which is out of date");
            return ExitCode.Fine;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return Refuse($"{Shown(name)}: this is out of date and cannot be taken away: {problem.Message}");
        }
    }

    private bool IsInput(string name)
    {
        string path = Path.Combine(full, name);
        return inputs.Contains(path, StringComparer.OrdinalIgnoreCase)
            || (FileFacts.Of(path) is { } facts && inputs.Any(i => FileFacts.Of(i)?.Identity == facts.Identity));
    }

    private string Shown(string name) => Path.Combine(folder, name);

    private int Refuse(string sentence) => Refusal.Tell(host, sentence);
}
