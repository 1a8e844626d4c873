namespace Floorplan.Model.Binding;

/// <summary>
/// How much one plan may hold, so that time and memory stay in check. All are the project's own choice, far above any real unit. The
/// guide lists them, with those of <see cref="Floorplan.Language.Parsing.Bounds"/>.
/// </summary>
public static class PlanBounds
{
    /// <summary>Statements besides kinds.</summary>
    public const int MostThings = 20_000;

    /// <summary>Rooms are cut from one another, which costs more.</summary>
    public const int MostRooms = 400;

    /// <summary>Rooms in rooms in rooms: their dimensions and hatches grow as the square of this.</summary>
    public const int DeepestRooms = 200;

    /// <summary>Legs of all flows: each has a way that is looked for.</summary>
    public const int MostLegs = 20_000;

    /// <summary>Details that all things take from their kinds.</summary>
    public const int MostTaken = 200_000;

    /// <summary>Files that kinds are read from.</summary>
    public const int MostFiles = 64;

    /// <summary>Files that use files that use files.</summary>
    public const int DeepestFiles = 8;

    /// <summary>Pairs of things that take up the same floor, and so many more for each thing: shelves hang over benches.</summary>
    public const int MostPairs = 5_000;

    public const int MorePairsForEach = 10;

    /// <summary>
    /// Steps (<see cref="Space.Steps"/>) that one check takes from text to findings, in millions: about 20 seconds of a processor.
    /// Measured.
    /// </summary>
    public const int MostMillionSteps = 300;
}
