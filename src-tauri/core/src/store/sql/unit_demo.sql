SELECT id FROM unit WHERE demo = 1
