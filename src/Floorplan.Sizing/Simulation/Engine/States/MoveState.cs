using Floorplan.Sizing.Simulation.Line;

namespace Floorplan.Sizing.Simulation.Engine.States;

/// <summary>What is on the way between two steps.</summary>
/// <param name="byProduct">The way as each product takes it: at least one.</param>
internal sealed class MoveState(LineMove[] byProduct)
{
    private readonly int[] under = new int[byProduct.Length];

    /// <summary>As the first product takes it: what all products share.</summary>
    public LineMove Move => byProduct[0];

    /// <summary>One that carries any product in loads carries all.</summary>
    public bool HasCarrier { get; } = byProduct.Any(m => m is { IsTaken: true, Load: > 1 });

    /// <summary>Trolleys that stand at the start.</summary>
    public int Standing { get; set; } = byProduct[0].Carriers;

    /// <summary>Items on the one that is being loaded.</summary>
    public int Loaded { get; set; }

    /// <summary>The product on it.</summary>
    public int Product { get; set; }

    public int Trips { get; set; }

    public int Items { get; set; }

    /// <summary>Items of a product that are done and go this way.</summary>
    public int Ready(StepState from, int product)
    {
        var move = byProduct[product];
        var at = from.At(product);
        return !move.IsTaken ? 0 : move.IsBack ? at.ToSendBack : at.Done - at.ToSendBack;
    }

    public LineMove Of(int product) => byProduct[product];

    /// <summary>Items of a product on their way.</summary>
    public int Under(int product) => under[product];

    public void SetOut(int product, int items) => under[product] += items;
}
