import type { Component } from 'svelte';

import AccessoryOutletAbsent from './accessory_outlet/absent.svelte';
import AccessoryOutletPresent from './accessory_outlet/present.svelte';
import AccessoryOutletWhere from './accessory_outlet/where.svelte';
import AerialCapacitorWhere from './aerial_capacitor/where.svelte';
import BackFitted from './back/fitted.svelte';
import BackMissing from './back/missing.svelte';
import BackWhere from './back/where.svelte';
import BareMetalInstrumentJack from './bare_metal/instrument_jack.svelte';
import BareMetalNoneAnywhere from './bare_metal/none_anywhere.svelte';
import BareMetalPanelOrCabinet from './bare_metal/panel_or_cabinet.svelte';
import BareMetalScrewsOrShafts from './bare_metal/screws_or_shafts.svelte';
import BareMetalSocketOrPickup from './bare_metal/socket_or_pickup.svelte';
import BareMetalWhere from './bare_metal/where.svelte';
import CommonLegNeither from './common_leg/neither.svelte';
import CommonLegPinA from './common_leg/pin_a.svelte';
import CommonLegPinB from './common_leg/pin_b.svelte';
import CommonLegWhere from './common_leg/where.svelte';
import CommonToChassisDirect from './common_to_chassis/direct.svelte';
import CommonToChassisNotJoined from './common_to_chassis/not_joined.svelte';
import CommonToChassisThroughNetwork from './common_to_chassis/through_network.svelte';
import CommonToChassisWhere from './common_to_chassis/where.svelte';
import CordClothOrRubber from './cord/cloth_or_rubber.svelte';
import CordCracked from './cord/cracked.svelte';
import CordSound from './cord/sound.svelte';
import CordSpliced from './cord/spliced.svelte';
import CordWhere from './cord/where.svelte';
import CordWiresOrdinary from './cord_wires/ordinary.svelte';
import CordWiresThreeWiresTwoPins from './cord_wires/three_wires_two_pins.svelte';
import CordWiresWhere from './cord_wires/where.svelte';
import EarthLiftAbsent from './earth_lift/absent.svelte';
import EarthLiftPresent from './earth_lift/present.svelte';
import EarthLiftWhere from './earth_lift/where.svelte';
import EarthWireNotOnChassis from './earth_wire/not_on_chassis.svelte';
import EarthWireOnChassis from './earth_wire/on_chassis.svelte';
import EarthWireWhere from './earth_wire/where.svelte';
import FeedBothHot from './feed/both_hot.svelte';
import FeedDirect from './feed/direct.svelte';
import FeedIsolated from './feed/isolated.svelte';
import FeedStepDownAuto from './feed/step_down_auto.svelte';
import FilterCapacitorsSound from './filter_capacitors/sound.svelte';
import FilterCapacitorsSwollenOrLeaking from './filter_capacitors/swollen_or_leaking.svelte';
import FilterCapacitorsWhere from './filter_capacitors/where.svelte';
import FuseNone from './fuse/none.svelte';
import FusePinALeg from './fuse/pin_a_leg.svelte';
import FusePinBLeg from './fuse/pin_b_leg.svelte';
import FuseWhere from './fuse/where.svelte';
import IronSeenLarge from './iron_seen/large.svelte';
import IronSeenNoneVisible from './iron_seen/none_visible.svelte';
import IronSeenSmall from './iron_seen/small.svelte';
import IronSeenWhere from './iron_seen/where.svelte';
import KindConsoleRadio from './kind/console_radio.svelte';
import KindInstrumentAmplifier from './kind/instrument_amplifier.svelte';
import KindOther from './kind/other.svelte';
import KindPortableRadio from './kind/portable_radio.svelte';
import KindRecordPlayer from './kind/record_player.svelte';
import KindTableRadio from './kind/table_radio.svelte';
import KindWhere from './kind/where.svelte';
import LineCapacitorBothLegs from './line_capacitor/both_legs.svelte';
import LineCapacitorNone from './line_capacitor/none.svelte';
import LineCapacitorOnSelector from './line_capacitor/on_selector.svelte';
import LineCapacitorPinALeg from './line_capacitor/pin_a_leg.svelte';
import LineCapacitorPinBLeg from './line_capacitor/pin_b_leg.svelte';
import LineCapacitorWhere from './line_capacitor/where.svelte';
import LineCapacitorClassClassY from './line_capacitor_class/class_y.svelte';
import LineCapacitorClassOrdinary from './line_capacitor_class/ordinary.svelte';
import LineCapacitorClassWhere from './line_capacitor_class/where.svelte';
import MaterialsAsbestos from './materials/asbestos.svelte';
import MaterialsNone from './materials/none.svelte';
import MaterialsPcb from './materials/pcb.svelte';
import MaterialsRadium from './materials/radium.svelte';
import MaterialsSelenium from './materials/selenium.svelte';
import MaterialsWhere from './materials/where.svelte';
import MetalJoinedChassis from './metal_joined/chassis.svelte';
import MetalJoinedNo from './metal_joined/no.svelte';
import MetalJoinedCommon from './metal_joined/to_common.svelte';
import MetalJoinedWhere from './metal_joined/where.svelte';
import NetworkCapacitorWhere from './network_capacitor/where.svelte';
import NetworkResistorWhere from './network_resistor/where.svelte';
import PlugBatteryOnly from './plug/battery_only.svelte';
import PlugEarthPinMissing from './plug/earth_pin_missing.svelte';
import PlugNoPlug from './plug/no_plug.svelte';
import PlugOutsideSupply from './plug/outside_supply.svelte';
import PlugThreePins from './plug/three_pins.svelte';
import PlugThreePinsReversible from './plug/three_pins_reversible.svelte';
import PlugTwoEqualBlades from './plug/two_equal_blades.svelte';
import PlugTwoPolarisedBlades from './plug/two_polarised_blades.svelte';
import PlugWhere from './plug/where.svelte';
import RatedWhere from './rated/where.svelte';
import RatingPlateAcDc from './rating_plate/ac_dc.svelte';
import RatingPlateAcDcBattery from './rating_plate/ac_dc_battery.svelte';
import RatingPlateAcOnly from './rating_plate/ac_only.svelte';
import RatingPlateBattery from './rating_plate/battery.svelte';
import RatingPlateNone from './rating_plate/none.svelte';
import RatingPlateWhere from './rating_plate/where.svelte';
import RewiredLooksOriginal from './rewired/looks_original.svelte';
import RewiredReworked from './rewired/reworked.svelte';
import RewiredWhere from './rewired/where.svelte';
import SelectorAbsent from './selector/absent.svelte';
import SelectorPresent from './selector/present.svelte';
import SelectorWhere from './selector/where.svelte';
import SwitchLegBoth from './switch_leg/both.svelte';
import SwitchLegNone from './switch_leg/none.svelte';
import SwitchLegPinA from './switch_leg/pin_a.svelte';
import SwitchLegPinB from './switch_leg/pin_b.svelte';
import SwitchLegWhere from './switch_leg/where.svelte';
import TerminalsAerialOrEarth from './terminals/aerial_or_earth.svelte';
import TerminalsNone from './terminals/none.svelte';
import TerminalsPickupOrSpeaker from './terminals/pickup_or_speaker.svelte';
import TerminalsWhere from './terminals/where.svelte';
import TingleNotReported from './tingle/not_reported.svelte';
import TingleReported from './tingle/reported.svelte';
import TingleWhere from './tingle/where.svelte';
import TransformerHeatersOnlyTraced from './transformer/heaters_only_traced.svelte';
import TransformerMotorWinding from './transformer/motor_winding.svelte';
import TransformerNone from './transformer/none.svelte';
import TransformerNotTraced from './transformer/not_traced.svelte';
import TransformerSeparateTraced from './transformer/separate_traced.svelte';
import TransformerSharedLead from './transformer/shared_lead.svelte';
import TransformerWhere from './transformer/where.svelte';
import TubeCountWhere from './tube_count/where.svelte';
import TubeListWhere from './tube_list/where.svelte';

/** By question, then by answer; `where` shows where to look. */
const DRAWINGS: Readonly<Record<string, Readonly<Record<string, Component>>>> = {
  plug: {
    where: PlugWhere,
    two_equal_blades: PlugTwoEqualBlades,
    two_polarised_blades: PlugTwoPolarisedBlades,
    three_pins: PlugThreePins,
    earth_pin_missing: PlugEarthPinMissing,
    three_pins_reversible: PlugThreePinsReversible,
    battery_only: PlugBatteryOnly,
    outside_supply: PlugOutsideSupply,
    no_plug: PlugNoPlug,
  },
  bare_metal: {
    where: BareMetalWhere,
    none_anywhere: BareMetalNoneAnywhere,
    screws_or_shafts: BareMetalScrewsOrShafts,
    panel_or_cabinet: BareMetalPanelOrCabinet,
    instrument_jack: BareMetalInstrumentJack,
    socket_or_pickup: BareMetalSocketOrPickup,
  },
  back: {
    where: BackWhere,
    fitted: BackFitted,
    missing: BackMissing,
  },
  terminals: {
    where: TerminalsWhere,
    none: TerminalsNone,
    aerial_or_earth: TerminalsAerialOrEarth,
    pickup_or_speaker: TerminalsPickupOrSpeaker,
  },
  selector: {
    where: SelectorWhere,
    absent: SelectorAbsent,
    present: SelectorPresent,
  },
  earth_lift: {
    where: EarthLiftWhere,
    present: EarthLiftPresent,
    absent: EarthLiftAbsent,
  },
  kind: {
    where: KindWhere,
    table_radio: KindTableRadio,
    console_radio: KindConsoleRadio,
    portable_radio: KindPortableRadio,
    record_player: KindRecordPlayer,
    instrument_amplifier: KindInstrumentAmplifier,
    other: KindOther,
  },
  rating_plate: {
    where: RatingPlateWhere,
    ac_dc: RatingPlateAcDc,
    ac_only: RatingPlateAcOnly,
    ac_dc_battery: RatingPlateAcDcBattery,
    battery: RatingPlateBattery,
    none: RatingPlateNone,
  },
  iron_seen: {
    where: IronSeenWhere,
    none_visible: IronSeenNoneVisible,
    small: IronSeenSmall,
    large: IronSeenLarge,
  },
  tube_list: {
    where: TubeListWhere,
  },
  tube_count: {
    where: TubeCountWhere,
  },
  tingle: {
    where: TingleWhere,
    reported: TingleReported,
    not_reported: TingleNotReported,
  },
  rewired: {
    where: RewiredWhere,
    looks_original: RewiredLooksOriginal,
    reworked: RewiredReworked,
  },
  cord: {
    where: CordWhere,
    sound: CordSound,
    cracked: CordCracked,
    spliced: CordSpliced,
    cloth_or_rubber: CordClothOrRubber,
  },
  cord_wires: {
    where: CordWiresWhere,
    ordinary: CordWiresOrdinary,
    three_wires_two_pins: CordWiresThreeWiresTwoPins,
  },
  accessory_outlet: {
    where: AccessoryOutletWhere,
    present: AccessoryOutletPresent,
    absent: AccessoryOutletAbsent,
  },
  metal_joined: {
    where: MetalJoinedWhere,
    chassis: MetalJoinedChassis,
    common: MetalJoinedCommon,
    no: MetalJoinedNo,
  },
  transformer: {
    where: TransformerWhere,
    none: TransformerNone,
    heaters_only_traced: TransformerHeatersOnlyTraced,
    separate_traced: TransformerSeparateTraced,
    shared_lead: TransformerSharedLead,
    motor_winding: TransformerMotorWinding,
    not_traced: TransformerNotTraced,
  },
  common_to_chassis: {
    where: CommonToChassisWhere,
    direct: CommonToChassisDirect,
    through_network: CommonToChassisThroughNetwork,
    not_joined: CommonToChassisNotJoined,
  },
  common_leg: {
    where: CommonLegWhere,
    pin_a: CommonLegPinA,
    pin_b: CommonLegPinB,
    neither: CommonLegNeither,
  },
  switch_leg: {
    where: SwitchLegWhere,
    pin_a: SwitchLegPinA,
    pin_b: SwitchLegPinB,
    both: SwitchLegBoth,
    none: SwitchLegNone,
  },
  line_capacitor: {
    where: LineCapacitorWhere,
    none: LineCapacitorNone,
    pin_a_leg: LineCapacitorPinALeg,
    pin_b_leg: LineCapacitorPinBLeg,
    both_legs: LineCapacitorBothLegs,
    on_selector: LineCapacitorOnSelector,
  },
  line_capacitor_class: {
    where: LineCapacitorClassWhere,
    ordinary: LineCapacitorClassOrdinary,
    class_y: LineCapacitorClassClassY,
  },
  earth_wire: {
    where: EarthWireWhere,
    on_chassis: EarthWireOnChassis,
    not_on_chassis: EarthWireNotOnChassis,
  },
  fuse: {
    where: FuseWhere,
    pin_a_leg: FusePinALeg,
    pin_b_leg: FusePinBLeg,
    none: FuseNone,
  },
  filter_capacitors: {
    where: FilterCapacitorsWhere,
    sound: FilterCapacitorsSound,
    swollen_or_leaking: FilterCapacitorsSwollenOrLeaking,
  },
  materials: {
    where: MaterialsWhere,
    none: MaterialsNone,
    asbestos: MaterialsAsbestos,
    selenium: MaterialsSelenium,
    pcb: MaterialsPcb,
    radium: MaterialsRadium,
  },
  network_capacitor: {
    where: NetworkCapacitorWhere,
  },
  aerial_capacitor: {
    where: AerialCapacitorWhere,
  },
  network_resistor: {
    where: NetworkResistorWhere,
  },
  rated: {
    where: RatedWhere,
  },
  feed: {
    direct: FeedDirect,
    both_hot: FeedBothHot,
    isolated: FeedIsolated,
    step_down_auto: FeedStepDownAuto,
  },
};

/**
 * The drawing of an answer, or (answer null) of where to look; null where there is none. A value, such as
 * `values.line_capacitor`, is drawn where its part is.
 */
export function drawing(question: string, answer: string | null): Component | null {
  const answers = own(DRAWINGS, question.replace(/^values\./, ''));
  return (answers && own(answers, answer ?? 'where')) ?? null;
}

/** Own keys only: an id such as `constructor` must find nothing. */
function own<Value>(table: Readonly<Record<string, Value>>, id: string): Value | undefined {
  return Object.hasOwn(table, id) ? table[id] : undefined;
}
