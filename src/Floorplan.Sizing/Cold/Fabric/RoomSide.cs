using Floorplan.Language.Quantities;
using Floorplan.Language.Text;
using Floorplan.Model.Rooms;
using Floorplan.Sizing.Weights;

namespace Floorplan.Sizing.Cold.Fabric;

/// <summary>One side of a room that heat goes through.</summary>
/// <param name="Beyond">The room behind a partition; null for the others.</param>
/// <param name="Run">Length of a wall, mm; 0 for ceiling and floor.</param>
/// <param name="Area">m2; doors in it count as wall.</param>
internal sealed record RoomSide(SideKind Kind, Room? Beyond, double Run, double Area, BuildUp Build)
{
    /// <summary>For sentences: <c>partition to kill</c>.</summary>
    public string Name => Kind switch
    {
        SideKind.Wall => "walls to outside",
        SideKind.Partition => $"partition to {Beyond!.Id}",
        SideKind.Ceiling => "ceiling",
        _ => "floor",
    };

    /// <summary>Both faces together, for heat that goes into a cold room, m2K/W.</summary>
    public double Films => Kind switch
    {
        SideKind.Wall => HeatPath.Inside + HeatPath.Outside,
        SideKind.Partition => 2 * HeatPath.Inside,
        SideKind.Ceiling => HeatPath.Down + HeatPath.Outside,
        _ => HeatPath.Up + HeatPath.Outside,
    };

    public double Transmittance => Build.BareFloor
        ? HeatPath.Transmittance(Films, (Build.Core / 1000, Build.Conductivity.Value), (BuildUp.ContainerFloor, Conductivity.Plywood.Value))
        : HeatPath.Transmittance(Films, (Build.Core / 1000, Build.Conductivity.Value));
}

internal enum SideKind
{
    Wall,
    Partition,
    Ceiling,
    Floor,
}

/// <summary>What a side is made of; the steel of a box counts nothing.</summary>
/// <param name="Said">As written; empty when not said.</param>
/// <param name="IsKnown">The words say a known material; otherwise it is the usual one.</param>
/// <param name="BareFloor">The plywood of a container lies under it.</param>
internal sealed record BuildUp(Length Thickness, string Said, LayerMaterial Material, bool IsKnown, bool BareFloor, SourceSpan Span)
{
    /// <summary>Of the plywood of a container, m; builder's specifications.</summary>
    public const double ContainerFloor = 0.028;

    /// <summary>What keeps heat back, mm.</summary>
    public double Core => Material.Core(Thickness);

    public Conductivity Conductivity => Conductivity.Of(Material);
}
