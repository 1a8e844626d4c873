namespace Floorplan.Drawing.Sheets;

/// <summary>Which dimension rows stand round the plan of sheet 1. What is left out stands in its keys.</summary>
public enum OuterRows
{
    All,
    WithoutItems,
    WithoutItemsAndOpenings,
}
