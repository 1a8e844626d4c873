namespace Floorplan.Drawing.Conventions;

/// <summary>
/// Layer names in the discipline-major-minor form of the US National CAD Standard (codes partly from memory, M). Upper case, at
/// most 31 characters, so that they are also valid in the oldest exchange formats.
/// </summary>
public static class Layers
{
    public const string Wall = "A-WALL";
    public const string WallHatch = "A-WALL-PATT";
    public const string Door = "A-DOOR";
    public const string Glazing = "A-GLAZ";
    public const string Floor = "A-FLOR";
    public const string FloorHatch = "A-FLOR-PATT";
    public const string Dimensions = "A-ANNO-DIMS";
    public const string Text = "A-ANNO-TEXT";
    public const string Leader = "A-ANNO-LEAD";
    public const string Legend = "A-ANNO-LEGN";
    public const string Schedule = "A-ANNO-SCHD";
    public const string Chart = "A-ANNO-CHRT";
    public const string TitleBlock = "A-ANNO-TTLB";
    public const string Marks = "A-ANNO-SYMB";
    public const string Finding = "A-ANNO-REVS";
    public const string Flow = "A-FLOW";
    public const string Opening = "S-OPNG";
    public const string Frame = "S-FRAM";
    public const string Equipment = "Q-EQPM";
    public const string EquipmentClear = "Q-EQPM-CLRN";
    public const string Worker = "Q-EQPM-WORK";
    public const string Rail = "Q-RAIL";
    public const string Water = "P-DOMW";
    public const string Drainage = "P-SANR";
    public const string Fixture = "P-FIXT";
    public const string Power = "E-POWR";
    public const string Light = "E-LITE";
    public const string Air = "M-HVAC";
    public const string SafetySign = "F-PROT-SIGN";

    /// <summary>Every layer, for writers that need a table of them.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        Wall, WallHatch, Door, Glazing, Floor, FloorHatch, Dimensions, Text, Leader, Legend, Schedule, Chart, TitleBlock, Marks, Finding,
        Flow, Opening, Frame, Equipment, EquipmentClear, Worker, Rail, Water, Drainage, Fixture, Power, Light, Air, SafetySign,
    ];
}
