# 各場所の枠。
frame-places = 場所
frame-clubhouse = クラブハウス
frame-card = メンバー表
frame-plate = 打席
frame-mound = マウンド
frame-book = スコアブック
frame-kept = ✓ 保存済み
frame-keeping = 保存中…
frame-following = 閲覧中
frame-only-follows = 別のタブがこの試合を記録しています。そちらで記録してください。
