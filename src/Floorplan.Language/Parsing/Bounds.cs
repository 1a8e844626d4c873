namespace Floorplan.Language.Parsing;

/// <summary>How much a file may hold. All are the project's own choice, far above any real unit.</summary>
public static class Bounds
{
    public const int MostCharacters = 4_000_000;

    public const int MostLines = 200_000;

    public const int LongestName = 60;

    public const int LongestText = 200;

    /// <summary>Digits of one number; more would not fit the exact arithmetic.</summary>
    public const int MostDigits = 15;

    public const decimal LargestNumber = 999_999_999_999_999;

    /// <summary>1 km, in nanometres.</summary>
    public const long LongestLength = 1_000_000_000_000;

    /// <summary>At one side of a station; own assumption, as the next five.</summary>
    public const int MostWorkers = 40;

    /// <summary>The crew of one room.</summary>
    public const int MostPeople = 200;

    /// <summary>On one way.</summary>
    public const int MostTrolleys = 100;

    /// <summary>Pieces of a product in one station.</summary>
    public const int MostOfProduct = 1_000_000;

    /// <summary>On one site.</summary>
    public const int MostToilets = 100;

    /// <summary>In one room.</summary>
    public const int MostLamps = 10_000;

    /// <summary>The smallest picture, 1:n.</summary>
    public const int SmallestScale = 1000;

    /// <summary>Details of one statement.</summary>
    public const int MostDetails = 2_000;

    /// <summary>More mistakes than this are not listed one by one.</summary>
    public const int MostMistakes = 500;
}
