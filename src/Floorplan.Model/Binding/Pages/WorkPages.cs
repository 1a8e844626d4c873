using Floorplan.Language.Diagnostics.Pages;

namespace Floorplan.Model.Binding.Pages;

/// <summary>Plans that take too long to check.</summary>
internal static class WorkPages
{
    public static IReadOnlyList<DiagnosticPage> All { get; } =
    [
        new("too-much-work",
            $"Checking a plan takes at most {PlanBounds.MostMillionSteps} million steps of searching, about 20 seconds. Real units take a "
                + "hundredth of that. Mostly there are very many stops of flows among very many things.",
            "flow product\n  t1 -> t2 -> t3 …",
            "station t1 \"Table\" in dry, 900 x 600 x 900, corner south-west")
        {
            Around = Setting.Rooms,
        },
    ];
}
