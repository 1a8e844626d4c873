using Floorplan.Language.Quantities;
using Floorplan.Language.Text;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Weights;

/// <summary>One layer that is built into the shell, or all partitions together.</summary>
/// <param name="Name"><c>wall lining</c>.</param>
/// <param name="Made">What it is taken to be, and that the plan does not say it where it does not: <c>cement screed 60 mm, not
/// said</c>.</param>
/// <param name="PerArea">Weight of one square metre; its value is in kg.</param>
/// <param name="CentreX">Of its weight, in plan mm.</param>
public sealed record Layer(string Name, string Made, Figure Area, Figure PerArea, Figure Weight, double CentreX, double CentreY)
{
    private static readonly Source Product = new("area times weight of a square metre", Origin.CommonPractice);
    private static readonly Source Build = new("the layer between its faces, and the faces", Origin.CommonPractice);

    /// <param name="usual">Taken where the plan does not say the material, or not in words that are known.</param>
    internal static Layer Of(
        string name, LayerPlace place, Length thickness, string said, LayerMaterial usual, string why, SourceSpan span, UnitSystem units)
    {
        var found = LayerMaterials.Find(said, place.IsFloor);
        var material = found ?? usual;
        var words = found is not null ? FigureInput.Said("material", $"{said}, taken as {material.Name}", span)
            : FigureInput.Taken(
                "material", said.Length == 0 ? $"not said, taken as {material.Name}" : $"{said} is not known, taken as {material.Name}",
                new Source(why, Origin.OwnAssumption));
        double each = material.PerSquareMetre(thickness);
        var perArea = new Figure
        {
            Name = $"weight of a square metre of {name}",
            Of = Figure.WholePlan,
            Value = each,
            Kind = QuantityKind.Mass,
            Text = WorkingText.Areal(each, units),
            Inputs =
            [
                words,
                FigureInput.Said("thickness", QuantityText.Length(thickness, units), span),
                FigureInput.Taken("weight of the material", WorkingText.Density(material.Density, units), material.Source),
                .. material.Faces > 0
                    ? [FigureInput.Taken("weight of its faces", WorkingText.Areal(material.Faces, units), material.Source)]
                    : Array.Empty<FigureInput>(),
            ],
            Formula = material.Faces > 0 ? "faces + thickness between them x weight of the material" : "thickness x weight of the material",
            Substituted = (material.Faces > 0 ? $"{WorkingText.Areal(material.Faces, units)} + " : "")
                + $"{WorkingText.Long(material.Core(thickness), units)} x {WorkingText.Density(material.Density, units)}",
            Source = Build,
        };
        double kilograms = place.Area.Value * each;
        var weight = new Figure
        {
            Name = $"weight of {name}",
            Of = Figure.WholePlan,
            Value = kilograms,
            Kind = QuantityKind.Mass,
            Text = QuantityText.Of(kilograms, Measure.Mass, units),
            Inputs = [FigureInput.Of(place.Area), FigureInput.Of(perArea)],
            Formula = "area x weight of a square metre",
            Substituted = $"{place.Area.Text} x {perArea.Text}",
            Source = Product,
        };
        string unsure = found is not null ? "" : said.Length == 0 ? ", not said" : $", {said} is not known";
        string made = $"{material.Name}, {QuantityText.Length(thickness, units)}{unsure}";
        return new Layer(name, made, place.Area, perArea, weight, place.CentreX, place.CentreY);
    }
}

/// <summary>Where a layer lies and how much of it there is.</summary>
internal sealed record LayerPlace(Figure Area, double CentreX, double CentreY, bool IsFloor = false);
