using Floorplan.Language.Quantities;

namespace Floorplan.Model.Stations;

/// <summary>Floor that one standing worker takes.</summary>
public static class WorkerSize
{
    /// <summary>Along the bench: forearm-forearm breadth of a 95th-percentile man, 667 mm (ANSUR II, NATICK/TR-15/007).</summary>
    public static Length Width { get; } = Length.FromMillimetres(667);

    /// <summary>
    /// Away from the bench: abdominal depth of a 95th-percentile man 320 mm (ANSUR II) plus room for feet, 450 mm; project's own
    /// assumption.
    /// </summary>
    public static Length Depth { get; } = Length.FromMillimetres(450);
}
