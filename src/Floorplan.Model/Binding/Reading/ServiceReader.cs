using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Values;
using Floorplan.Model.Binding.Drafts;
using Floorplan.Model.Services;

namespace Floorplan.Model.Binding.Reading;

/// <summary>Reads service points, and light and air of whole rooms.</summary>
internal static class ServiceReader
{
    private static readonly string[] DrainForms = ["floor", "trench", "sink"];

    /// <summary>Null when it has no name.</summary>
    public static ServiceDraft? Read(ServiceStatement statement)
    {
        if (statement.Name is not { } name || KindOf(statement.Keyword.Text) is not { } kind)
        {
            return null;
        }

        string[] words = [.. statement.Words.Select(w => w.Text)];
        var point = new ServicePoint
        {
            Id = name.Text,
            Label = statement.Label?.Text ?? "",
            Kind = kind,
            At = default,
            Wall = statement.Wall?.Side ?? statement.Place.OfType<AgainstTerm>().FirstOrDefault()?.Wall.Side,
            Height = statement.Height?.Value,
            Cold = words.Contains("cold"),
            Hot = words.Contains("hot"),
            Size = kind == ServiceKind.Hose ? null : statement.Size?.Value,
            SizeAcross = statement.SizeAcross?.Value,
            Form = kind switch
            {
                ServiceKind.Drain => words.FirstOrDefault(w => DrainForms.Contains(w)) ?? DrainForms[0],
                ServiceKind.Hole => words.FirstOrDefault(w => w is "floor" or "roof") ?? "",
                _ => "",
            },
            OutletBelow = statement.OutletBelow?.Value,
            HoseLength = kind == ServiceKind.Hose ? statement.Size?.Value : null,
            Circuit = statement.Circuit?.Text ?? "",
            Ratings = [.. statement.Ratings.Select(r => r.Value)],
            Words = words,
            Span = statement.HeadSpan,
        };
        return new ServiceDraft(point, Ref(statement.Room), Ref(statement.On), PlaceOf(statement)) { RunsTo = Ref(statement.RunsTo) };
    }

    public static IEnumerable<ServiceDraft> Read(RoomServiceStatement statement)
    {
        foreach (var room in statement.Rooms)
        {
            var kind = room.Direction?.Text switch
            {
                "supply" => ServiceKind.AirSupply,
                "exhaust" => ServiceKind.AirExhaust,
                _ => ServiceKind.Light,
            };
            string what = kind == ServiceKind.Light ? "light" : $"air {room.Direction!.Text}";
            var point = new ServicePoint
            {
                // Names have no spaces, so this one is never taken by another thing.
                Id = $"{what} {room.Room.Text}",
                Kind = kind,
                At = default,
                Ratings = room.Amount is { } amount ? [amount.Value] : [],
                Words = room.Direction is { } direction ? [direction.Text] : [],
                Span = room.Span,
            };
            yield return new ServiceDraft(point, new NameRef(room.Room.Text, room.Room.Span), null, []);
        }
    }

    // `north wall` says the same as `against north wall`.
    private static IReadOnlyList<PlaceTerm> PlaceOf(ServiceStatement statement)
        => statement.Wall is { } wall ? [new AgainstTerm(wall, wall.Span), .. statement.Place] : statement.Place;

    private static NameRef? Ref(NameSyntax? name) => name is null ? null : new NameRef(name.Text, name.Span);

    private static ServiceKind? KindOf(string keyword) => keyword switch
    {
        "water" => ServiceKind.Water,
        "drain" => ServiceKind.Drain,
        "hose" => ServiceKind.Hose,
        "panel" => ServiceKind.Panel,
        "outlet" => ServiceKind.Outlet,
        "switch" => ServiceKind.Switch,
        "heater" => ServiceKind.Heater,
        "hole" => ServiceKind.Hole,
        _ => null,
    };
}
