using Floorplan.Sizing.Drainage.Lines;
using Floorplan.Sizing.Sizes;
using Floorplan.Sizing.Water.Hot;
using Floorplan.Sizing.Water.Pipes;
using Floorplan.Sizing.Water.Sizes;

namespace Floorplan.Sizing;

/// <content>What the unit needs, subject by subject.</content>
public sealed partial class PlanFacts
{
    private PlanSizes? sizes;
    private Told<SizedSubject>? weightSizes;
    private Told<SizedSubject>? groundSizes;
    private Told<SizedSubject>? steelSizes;
    private SizedSubject? moneySizes;
    private DrainLines? drainLines;
    private Told<DrainsSized>? drainsSized;
    private Told<HotWaterSized>? hotWaterSized;
    private Told<WaterPiping>? waterPiping;
    private Told<WaterSized>? waterSized;

    public PlanSizes Sizes => Once(ref sizes, PlanSizes.Of);

    /// <summary>Null where the plan has no water.</summary>
    public SizedSubject? WaterSizes => WaterSized?.Subject;

    /// <summary>Null where nothing takes hot water or ice.</summary>
    public SizedSubject? HotWaterSizes => HotWaterSized?.Subject;

    public HotWaterSized? HotWaterSized
        => Once(ref hotWaterSized, f => new Told<HotWaterSized>(Water.Hot.HotWaterSized.Of(f))).Value;

    /// <summary>Of every drain, without the day.</summary>
    public DrainLines DrainLines => Once(ref drainLines, DrainLines.Of);

    /// <summary>Null where the plan has no drain.</summary>
    public SizedSubject? DrainSizes => DrainsSized?.Subject;

    public DrainsSized? DrainsSized => Once(ref drainsSized, f => new Told<DrainsSized>(DrainsSized.Of(f))).Value;

    /// <summary>Pipes and pressure, without the day; null where nothing takes water.</summary>
    public WaterPiping? WaterPiping => Once(ref waterPiping, f => new Told<WaterPiping>(WaterPiping.Of(f))).Value;

    public WaterSized? WaterSized => Once(ref waterSized, f => new Told<WaterSized>(Water.Sizes.WaterSized.Of(f))).Value;

    /// <summary>Null for a shed.</summary>
    public SizedSubject? WeightSizes => Once(ref weightSizes, f => new Told<SizedSubject>(Weights.Sizes.WeightSizes.Of(f))).Value;

    /// <summary>Null for what is no container.</summary>
    public SizedSubject? GroundSizes => Once(ref groundSizes, f => new Told<SizedSubject>(Ground.GroundSizes.Of(f))).Value;

    /// <summary>Null where no wall of a container is cut and nothing is framed.</summary>
    public SizedSubject? SteelSizes => Once(ref steelSizes, f => new Told<SizedSubject>(Frames.Sizes.SteelSizes.Of(f))).Value;

    /// <summary>Last of all, because it prices what the others have worked out.</summary>
    public SizedSubject MoneySizes => Once(ref moneySizes, f => Cost.MoneySizes.Of(f, [.. PlanSizes.BeforeMoney(f)]));
}
