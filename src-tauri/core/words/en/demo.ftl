# Units of the demonstration and where they stand. Makers, owners and places are invented.

demo-stall-radio-name = Wexelby table radio, brown case
demo-stall-radio-place = Flea market, stall 14, asked 20
demo-picnic-radio-name = Plimmerose picnic portable
demo-picnic-radio-place = Flea market, stall 31, box under the table
demo-aerial-radio-name = Zwellin shelf radio, aerial socket
demo-aerial-radio-place = Flea market by the canal, blanket of Mr. Hobbinet
demo-borrowed-amplifier-name = Abbersnell combo, two channels
demo-borrowed-amplifier-place = Backstage, Lantern Hall, lent by the support band
demo-house-amplifier-name = Drumhollow house amplifier
demo-house-amplifier-place = Backstage, Lantern Hall, left wing
demo-ground-switch-amplifier-name = Nockersend practice amplifier
demo-ground-switch-amplifier-place = Backstage, spare of Odo Trinket
demo-kitchen-radio-name = Quorvane kitchen radio, white
demo-kitchen-radio-place = Shop, intake shelf 2, owner Ms. Tibbaloo
demo-record-player-name = Ostrelle school record player
demo-record-player-place = Shop, bench 1, owner Brindle Lane School
demo-console-name = Orrumby console radio, walnut
demo-console-place = Shop, floor by the door, owner Mr. Yarrowick
demo-repaired-radio-name = Wexelby table radio, green case
demo-repaired-radio-place = Shop, shelf 5, ready to go
