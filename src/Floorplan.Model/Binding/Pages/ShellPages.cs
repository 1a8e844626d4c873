using Floorplan.Language.Diagnostics.Pages;

namespace Floorplan.Model.Binding.Pages;

/// <summary>What is built into: container, trailer or shed.</summary>
internal static class ShellPages
{
    private const string Room = "\nroom all dry from west to east";

    public static IReadOnlyList<DiagnosticPage> All { get; } =
    [
        new("empty-plan",
            "There is no statement in this file yet. `floorplan new` lists the templates to start from.",
            "# I begin tomorrow.",
            "shell container 20 ft standard" + Room),
        new("shell-missing",
            "Nothing says what is built into, so that rooms have no walls to be told from.",
            "room all dry from west to east",
            "shell container 20 ft standard" + Room),
        new("unknown-container",
            "Containers have the sizes of ISO 668. For anything else write a trailer or a shed with the sizes that you measured.",
            "shell container 30 ft standard" + Room,
            "shell container 40 ft high-cube" + Room),
        new("shell-too-small",
            "Walls, linings and floor build-up leave no room inside.",
            "shell container 20 ft standard\n  lining walls 1200" + Room,
            "shell container 20 ft standard\n  lining walls 60" + Room),
        new("shell-size",
            "The corners of this shed lie on one line, or it is larger than 1 km.",
            "shell shed corners 0 0, 9000 0, 4500 0, 2000 0\n  eaves 2700" + Room,
            "shell shed corners 0 0, 9000 0, 9000 4500, 0 4500\n  eaves 2700" + Room),
        new("not-an-end",
            "A container or trailer lies west to east, so that its ends are west and east.",
            "shell container 20 ft standard\n  doors north" + Room,
            "shell container 20 ft standard\n  doors west" + Room),
        new("doors-at-hitch",
            "The big doors and the hitch are at the same end, where the towing vehicle would be in the way.",
            "shell trailer 6 m x 2.4 m x 2.5 m\n  hitch west\n  doors west" + Room,
            "shell trailer 6 m x 2.4 m x 2.5 m\n  hitch west\n  doors east" + Room),
        new("axle-count",
            "A trailer has 1 to 6 axles.",
            "shell trailer 6 m x 2.4 m x 2.5 m\n  axles 12" + Room,
            "shell trailer 6 m x 2.4 m x 2.5 m\n  axles 2" + Room),
        new("axles-beyond-trailer",
            "The axles are told from the coupling, and lie under the box. Where the coupling lies before the box, `hitch` says how far.",
            "shell trailer 6 m x 2.4 m x 2.5 m\n  axles 2, 7 m from hitch" + Room,
            "shell trailer 6 m x 2.4 m x 2.5 m\n  hitch west, 1200 ahead\n  axles 2, 4.5 m from hitch" + Room),
        new("shed-doors",
            "A shed has no doors of its own. Write each of its doors as a `door`.",
            "shell shed 9000 x 5000 x 2700\n  doors west" + Room,
            "shell shed 9000 x 5000 x 2700" + Room + "\ndoor d1 all to outside, west wall, centred, 1200 x 2100"),
        new("eaves-missing",
            "The height of the eaves is needed for ceilings and openings.",
            "shell shed corners 0 0, 9000 0, 9000 4500, 0 4500" + Room,
            "shell shed corners 0 0, 9000 0, 9000 4500, 0 4500\n  eaves 2700" + Room),
        new("corner-count",
            "A shed has 4 to 40 corners.",
            "shell shed corners 0 0, 9000 0, 9000 4500\n  eaves 2700" + Room,
            "shell shed corners 0 0, 9000 0, 9000 4500, 0 4500\n  eaves 2700" + Room),
        new("slanted-wall",
            "Walls run west to east or south to north, so that each corner shares one of its two figures with the next.",
            "shell shed corners 0 0, 9000 0, 8000 4500, 0 4500\n  eaves 2700" + Room,
            "shell shed corners 0 0, 9000 0, 9000 4500, 0 4500\n  eaves 2700" + Room),
        new("crossing-walls",
            "The corners do not go round the shed in order, so that its walls cross or it falls into parts.",
            "shell shed corners 0 0, 4000 0, 4000 4000, 8000 4000, 8000 8000, 4000 8000, 4000 4000, 0 4000\n  eaves 2700" + Room,
            "shell shed corners 0 0, 8000 0, 8000 8000, 4000 8000, 4000 4000, 0 4000\n  eaves 2700" + Room),
    ];
}
