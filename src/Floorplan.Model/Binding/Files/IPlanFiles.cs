using Floorplan.Language.Text;

namespace Floorplan.Model.Binding.Files;

/// <summary>Gives the files that a plan's <c>kinds from</c> statements name. Never throws for a file that is missing or refused.</summary>
public interface IPlanFiles
{
    /// <param name="from">The file that the <c>kinds from</c> statement stands in; names are read from its folder.</param>
    /// <param name="name">As written, with <c>/</c> between folders.</param>
    PlanFile Read(SourceText from, string name);
}

/// <summary>A file's text, or why there is none and a way out.</summary>
public sealed record PlanFile(SourceText? Source, string Problem = "", string? Help = null);
