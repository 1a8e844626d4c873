using Floorplan.Language.Quantities;
using Floorplan.Language.Text;
using Floorplan.Model.Limits;
using Floorplan.Model.Shells;

namespace Floorplan.Model.Binding.Drafts;

/// <summary>Everything that one file says, statement by statement, before names are resolved and places found.</summary>
internal sealed record PlanDraft(SourceText Source, PlanHead Head, BuiltShell Shell)
{
    public Length PartitionThickness { get; init; }

    public Length? PartitionHeight { get; init; }

    /// <summary>What partitions are built of, as written; empty when not said.</summary>
    public string PartitionBuild { get; init; } = "";

    public List<RoomFacts> Rooms { get; } = [];

    public List<OpeningDraft> Openings { get; } = [];

    public List<StationDraft> Stations { get; } = [];

    public List<ServiceDraft> Services { get; } = [];

    public List<RailDraft> Rails { get; } = [];

    public List<FallsDraft> Falls { get; } = [];

    public List<FlowDraft> Flows { get; } = [];

    public List<(NameRef Who, int People)> Crew { get; } = [];

    public List<(NameRef Where, NameRef From)> Helps { get; } = [];

    public Day? Day { get; set; }

    public List<LimitOverride> Limits { get; } = [];

    public List<(Acceptance Acceptance, IReadOnlyList<NameRef> Things)> Acceptances { get; } = [];

    public List<SheetWish> SheetWishes { get; } = [];
}
