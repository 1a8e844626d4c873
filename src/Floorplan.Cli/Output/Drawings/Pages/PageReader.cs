namespace Floorplan.Cli.Output.Drawings.Pages;

/// <summary>Who needs a file, in the order of the page.</summary>
internal enum PageReader
{
    Everybody,
    Owner,
    Inspector,
    Welder,
    Plumber,
    Electrician,
}

internal static class PageReaders
{
    public static string Words(this PageReader reader) => reader switch
    {
        PageReader.Everybody => "For everybody",
        PageReader.Owner => "For the owner and the crew",
        _ => $"For the {reader.ToString().ToLowerInvariant()}",
    };

    /// <summary>What is not named here is for everybody.</summary>
    public static PageReader OfSheet(int number) => number switch
    {
        2 or 9 => PageReader.Inspector,
        3 or 10 => PageReader.Owner,
        4 => PageReader.Plumber,
        5 => PageReader.Electrician,
        6 => PageReader.Welder,
        _ => PageReader.Everybody,
    };

    /// <inheritdoc cref="OfSheet"/>
    public static PageReader OfSchedule(string name) => name switch
    {
        "stations" or "weights" => PageReader.Owner,
        "finishes" => PageReader.Inspector,
        "openings" or "cut-outs" or "holes" or "frames" => PageReader.Welder,
        _ => PageReader.Everybody,
    };
}
