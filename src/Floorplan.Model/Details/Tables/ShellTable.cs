using Floorplan.Language.Details;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Model.Shapes;

namespace Floorplan.Model.Details.Tables;

/// <summary>All that the shell may say.</summary>
internal static class ShellTable
{
    public static IReadOnlyList<SaidRow<ShellStatement>> All { get; } =
    [
        SaidRows<ShellStatement>.Part("lining walls", ShellDetails.Lining, l => l.Walls),
        SaidRows<ShellStatement>.Part<LiningSyntax, string>(
            "lining walls of",
            ShellDetails.Lining,
            l => l.WallsOf?.Text,
            (text, _) => text),
        SaidRows<ShellStatement>.Part("lining ceiling", ShellDetails.Lining, l => l.Ceiling),
        SaidRows<ShellStatement>.Part<LiningSyntax, string>(
            "lining ceiling of",
            ShellDetails.Lining,
            l => l.CeilingOf?.Text,
            (text, _) => text),
        SaidRows<ShellStatement>.Part("lining floor", ShellDetails.Lining, l => l.Floor),
        SaidRows<ShellStatement>.Part<LiningSyntax, string>(
            "lining floor of",
            ShellDetails.Lining,
            l => l.FloorOf?.Text,
            (text, _) => text),
        SaidRows<ShellStatement>.Of(ShellDetails.Doors),
        SaidRows<ShellStatement>.Part<HitchSyntax, string>("hitch", ShellDetails.Hitch, h => h.End.Side.Word(), (end, _) => end),
        SaidRows<ShellStatement>.Part("hitch ahead", ShellDetails.Hitch, h => h.Ahead),
        SaidRows<ShellStatement>.Part("hitch rated", ShellDetails.Hitch, h => h.Rated),
        SaidRows<ShellStatement>.Part<AxlesSyntax, decimal>(
            "axles",
            ShellDetails.Axles,
            a => a.Count.Value,
            (n, _) => FormattableString.Invariant($"{n:0.##}")),
        SaidRows<ShellStatement>.Part("axles from hitch", ShellDetails.Axles, a => a.FromHitch),
        SaidRows<ShellStatement>.Part("axle rated", ShellDetails.Axles, a => a.Rated),
        SaidRows<ShellStatement>.Part("weight empty", ShellDetails.Weight, w => w.Empty),
        SaidRows<ShellStatement>.Part("weight rated", ShellDetails.Weight, w => w.Rated),
        SaidRows<ShellStatement>.Part<Language.Syntax.Values.LengthSyntax, Length>(
            "ground",
            ShellDetails.Ground,
            l => l.Value,
            (l, units) => QuantityText.Length(l, units) + " below floor"),
        SaidRows<ShellStatement>.Of(ShellDetails.TrueNorth, "degrees"),
        SaidRows<ShellStatement>.Of(ShellDetails.PostsEvery),
        SaidRows<ShellStatement>.Of(ShellDetails.Walls),
        SaidRows<ShellStatement>.Of(ShellDetails.Eaves),
        SaidRows<ShellStatement>.Part<IReadOnlyList<CornerSyntax>, IReadOnlyList<CornerSyntax>>(
            "corners",
            ShellDetails.Corners,
            c => c,
            Points),
    ];

    /// <summary><c>0 mm 0 mm, 9000 mm 0 mm</c></summary>
    internal static string Points(IReadOnlyList<CornerSyntax> points, UnitSystem units) =>
        string.Join(", ", points.Select(p => $"{QuantityText.Length(p.X.Value, units)} {QuantityText.Length(p.Y.Value, units)}"));
}
