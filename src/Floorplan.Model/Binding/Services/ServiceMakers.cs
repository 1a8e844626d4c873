using Floorplan.Language.Syntax.Statements;
using Floorplan.Model.Binding.Drafts;

namespace Floorplan.Model.Binding.Services;

/// <summary>The makers of all service points.</summary>
internal static class ServiceMakers
{
    private static readonly Dictionary<Type, IServiceMaker> ByStatement = new IServiceMaker[]
    {
        new WaterMaker(),
        new DrainMaker(),
        new HoseMaker(),
        new HoleMaker(),
        new PanelMaker(),
        new OutletMaker(),
        new SwitchMaker(),
        new HeaterMaker(),
        new LightMaker(),
        new AirMaker(),
    }.ToDictionary(m => m.Reads);

    /// <summary>Nothing for statements that are no service.</summary>
    public static IEnumerable<ServiceDraft> Read(Statement statement)
        => ByStatement.TryGetValue(statement.GetType(), out var maker) ? maker.Read(statement) : [];
}
